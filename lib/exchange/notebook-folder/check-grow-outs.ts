import { separateSexes } from "@/lib/science/crops/mating";
import { type Refusal, refusal } from "@/lib/science/outcome";
import { type Check, profileOf } from "./check";
import { type Entry, tainted } from "./entries";

type GrowOut = Entry<"growOuts">;

/** Counts of plants that cannot be. A grow-out's line with such a fault is marked, so that nothing is made of its counts. */
export function checkGrowOuts(check: Check): void {
  for (const growOut of check.entries.growOuts.bearers()) {
    const draft = growOut.draft;
    if (!draft || tainted(growOut, "plants_standing", "rogued_before_pollen", "rogued_after_pollen")) continue;
    const profile = tainted(growOut, "variety") ? null : profileOf(check, growOut.cells.variety);
    const fault = rogueFault(growOut) ?? parentsFault(growOut, profile !== null && separateSexes(profile));
    if (!fault) continue;
    draft.faulty.add(fault.column);
    check.findings.fault({ ...draft.origin, column: fault.column }, fault.refusal);
  }
}

interface ColumnFault {
  readonly column: "rogued_before_pollen" | "rogued_after_pollen" | "males_standing" | "seed_parents";
  readonly refusal: Refusal;
}

function rogueFault({ cells }: GrowOut): ColumnFault | null {
  const standing = cells.plants_standing;
  const before = cells.rogued_before_pollen ?? 0;
  const after = cells.rogued_after_pollen ?? 0;
  if (standing === null || before + after <= standing) return null;
  const column = before > standing ? "rogued_before_pollen" : "rogued_after_pollen";
  const wrong = `plants were rogued of ${standing} standing`;
  const needed = "plants_standing counts those alive just before the first rogue pass";
  return { column, refusal: refusal("more-rogued-than-standing", [], before + after, wrong, needed) };
}

/** `separate`: the crop is known to have separate sexes; where it is not known, what holds for any crop is asked. */
function parentsFault(growOut: GrowOut, separate: boolean): ColumnFault | null {
  const { cells } = growOut;
  if (cells.plants_standing === null) return null;
  const left = cells.plants_standing - (cells.rogued_before_pollen ?? 0);
  const males = separate ? (cells.males_standing ?? 0) : 0;
  const seedParents = cells.seed_parents ?? 0;
  if (tainted(growOut, "males_standing")) return null;
  if (males > left) {
    const wrong = `males are more than the ${left} plants that were left to flower`;
    const needed = "males_standing counts males among plants_standing, without rogues";
    return { column: "males_standing", refusal: refusal("more-males-than-plants", [], males, wrong, needed) };
  }
  if (tainted(growOut, "seed_parents") || seedParents <= left - males) return null;
  const whose = separate ? "females" : "plants left to flower";
  const wrong = `seed parents are more than the ${left - males} ${whose}`;
  const needed = `write at most ${left - males}, or correct plants_standing and rogued_before_pollen`;
  return { column: "seed_parents", refusal: refusal("more-seed-parents-than-plants", [], seedParents, wrong, needed) };
}
