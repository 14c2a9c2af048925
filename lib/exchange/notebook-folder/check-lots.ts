import { sameName } from "@/lib/registry/names/fold-name";
import { refusal } from "@/lib/science/outcome";
import { type Check, profileOf } from "./check";
import { type Entry, tainted } from "./entries";

/**
 * Inbreeding stands for founder lots alone. What a lot or grow-out came from is of the same crop; of another variety it is a
 * cross, with a warning.
 */
export function checkLots(check: Check): void {
  for (const lot of check.entries.lots.bearers()) {
    if (!lot.draft) continue;
    checkInbreeding(check, lot);
    const from = lot.cells.from;
    if (from === null || tainted(lot, "from", "variety")) continue;
    if ("growOut" in from) {
      const growOut = check.entries.growOuts.get(from.growOut);
      const variety = growOut && !tainted(growOut, "variety") ? growOut.cells.variety : null;
      checkCrop(check, lot, "from", from.growOut, variety);
    } else for (const { lot: parent } of from.lots) checkCrop(check, lot, "from", parent, varietyOfLot(check, parent));
  }
  for (const growOut of check.entries.growOuts.bearers()) {
    if (!growOut.draft || tainted(growOut, "parents", "variety")) continue;
    for (const { lot: parent } of growOut.cells.parents ?? []) {
      checkCrop(check, growOut, "parents", parent, varietyOfLot(check, parent));
    }
  }
}

function checkInbreeding(check: Check, { cells, draft }: Entry<"lots">): void {
  if (!draft || cells.inbreeding === null || cells.kind === null || cells.kind === "founder") return;
  draft.faulty.add("inbreeding");
  const wrong = `stands for the inbreeding of a ${cells.kind}`;
  const needed = "leave it empty: it is worked out, and given for founder lots alone";
  const fault = refusal("inbreeding-not-of-founder", [], cells.inbreeding, wrong, needed);
  check.findings.fault({ ...draft.origin, column: "inbreeding" }, fault);
}

function varietyOfLot(check: Check, name: string): string | null {
  const lot = check.entries.lots.get(name);
  return lot && !tainted(lot, "variety") ? lot.cells.variety : null;
}

function checkCrop(
  check: Check,
  made: Entry<"lots"> | Entry<"growOuts">,
  column: "from" | "parents",
  source: string,
  variety: string | null,
): void {
  const own = made.cells.variety;
  if (!made.draft || own === null || variety === null || sameName(own) === sameName(variety)) return;
  const [crop, other] = [profileOf(check, own), profileOf(check, variety)];
  if (crop === null || other === null) return;
  const spot = { ...made.draft.origin, column };
  if (crop.key === other.key) {
    const sentence = `"${source}" is of another variety, ${variety}: it is taken as a cross`;
    check.findings.warn(spot, "parent-of-other-variety", sentence);
    return;
  }
  made.draft.faulty.add(column);
  const wrong = `is of another crop (${other.commonName}, not ${crop.commonName})`;
  const fault = refusal("parent-of-other-crop", [], source, wrong, "name what it came from, of the same crop");
  check.findings.fault(spot, fault);
}
