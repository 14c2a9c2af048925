import { sameName } from "@/lib/registry/names/fold-name";
import { refusal } from "@/lib/science/outcome";
import { type Check, profileOf } from "./check";
import { type Entry, tainted } from "./entries";

/**
 * Inbreeding stands for founder lots alone. What a lot or grow-out came from is of the same crop; of another variety it is a
 * cross, with a warning.
 */
export function checkLots(check: Check): void {
  const mixed: Mixed[] = [];
  for (const lot of check.entries.lots.bearers()) {
    checkInbreeding(check, lot);
    const from = lot.cells.from;
    if (from === null || tainted(lot, "from", "variety")) continue;
    if ("growOut" in from) {
      const growOut = check.entries.growOuts.get(from.growOut);
      const variety = growOut && !tainted(growOut, "variety") ? growOut.cells.variety : null;
      mixed.push(...checkCrop(check, lot, "from", { name: from.growOut, variety, lot: null }));
    } else for (const parent of from.lots) mixed.push(...checkCrop(check, lot, "from", sourceLot(check, parent.lot)));
  }
  for (const growOut of check.entries.growOuts.bearers()) {
    if (tainted(growOut, "parents", "variety")) continue;
    for (const parent of growOut.cells.parents ?? []) {
      mixed.push(...checkCrop(check, growOut, "parents", sourceLot(check, parent.lot)));
    }
  }
  reportMixed(check, mixed);
}

interface Source {
  readonly name: string;
  /** null: not known */
  readonly variety: string | null;
  readonly lot: Entry<"lots"> | null;
}

/** Something made of another crop. */
interface Mixed {
  readonly made: Entry<"lots"> | Entry<"growOuts">;
  readonly column: "from" | "parents";
  readonly source: Source;
  readonly crops: readonly [own: string, other: string];
}

/** A lot that does not go with what it came from has the wrong variety itself: what came from it is not blamed again. */
function reportMixed(check: Check, mixed: readonly Mixed[]): void {
  const odd = new Set<object>(mixed.map(({ made }) => made));
  for (const { made, column, source, crops } of mixed) {
    if (!made.draft) continue;
    made.draft.faulty.add(column);
    if (source.lot !== null && odd.has(source.lot)) continue;
    const wrong = `is of another crop (${crops[1]}, not ${crops[0]})`;
    const fault = refusal("parent-of-other-crop", [], source.name, wrong, "name what it came from, of the same crop");
    check.findings.fault({ ...made.draft.origin, column }, fault);
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

function sourceLot(check: Check, name: string): Source {
  const lot = check.entries.lots.get(name) ?? null;
  return { name, variety: lot && !tainted(lot, "variety") ? lot.cells.variety : null, lot };
}

function checkCrop(
  check: Check,
  made: Entry<"lots"> | Entry<"growOuts">,
  column: "from" | "parents",
  source: Source,
): Mixed[] {
  const [own, other] = [made.cells.variety, source.variety];
  if (!made.draft || own === null || other === null || sameName(own) === sameName(other)) return [];
  const [crop, otherCrop] = [profileOf(check, own), profileOf(check, other)];
  if (crop === null || otherCrop === null) return [];
  if (crop.key !== otherCrop.key) {
    return [{ made, column, source, crops: [crop.commonName, otherCrop.commonName] }];
  }
  const sentence = `"${source.name}" is of another variety, ${other}: it is taken as a cross`;
  check.findings.warn({ ...made.draft.origin, column }, "parent-of-other-variety", sentence);
  return [];
}
