import { addDays } from "@/lib/science/dates/civil-day";
import { fieldNotes, lastDayTold, roguePasses } from "./field-notes";
import type { GrowOut, Unwritten } from "./grow-out";
import type { Jar } from "./jar";
import type { Telling } from "./telling";
import { lookedAround, tellPlan, tellReplanting } from "./working-year";

/** Writes a grow-out as far as it had come on the last day that is told of, with what was noted in the field. */
export function writeGrowOut(
  tell: Telling,
  growOut: GrowOut,
  sown: string,
  plot: string,
  parents: readonly (readonly [jar: Jar, share: number])[],
): void {
  const { sowing, counts, by, name } = growOut;
  const { outcome, unwritten = [] } = sowing;
  const ripe = outcome === undefined && `${growOut.harvestYear}-${tell.habit.harvested[0]}` <= lastDayTold;
  const counted = addDays(growOut.sown, 40) <= lastDayTold && (outcome === undefined || sowing.standing !== undefined);
  const walked = counted && outcome === undefined && unwritten.length === 0;
  const pulled = walked ? roguePasses(tell.book, growOut, tell.habit, lastDayTold) : { before: null, after: null };
  const known = (column: Unwritten, value: number | string, when: boolean) =>
    when && !unwritten.includes(column) ? value : null;
  tell.book.write("grow_outs.csv", {
    grow_out: name,
    variety: tell.variety.name,
    steward: by.name,
    plot,
    sown,
    parents:
      parents.length === 1 ? parents[0]?.[0].lot : parents.map(([jar, share]) => `${jar.lot}:${share}`).join(";"),
    seeds_sown: known("seeds_sown", counts.seeds, true),
    plants_standing: known("plants_standing", counts.standing, counted),
    males_standing: ripe ? counts.males : null,
    rogued_before_pollen: pulled.before,
    rogued_after_pollen: ripe ? pulled.after : null,
    seed_parents: known("seed_parents", counts.seedParents, ripe),
    seed_shares: known("seed_shares", growOut.shares, ripe),
    selfing_rate: sowing.selfing,
    foreign_pollen: sowing.foreign ?? (ripe ? assessed(tell, name) : null),
    outcome,
  });
  const looked = walked && fieldNotes(tell.book, growOut, tell.variety.crop, tell.habit, lastDayTold);
  tellPlan(tell, growOut, looked ? lookedAround(growOut, tell.habit) : null);
  if (walked) tellReplanting(tell, growOut, plot);
}

/** Of a crop that crosses, somebody put a figure to the foreign pollen in two years of five; else it is not assessed. */
function assessed(tell: Telling, name: string): number | null {
  const { pollen } = tell.habit;
  const draws = tell.draws(`foreign ${name}`);
  const crosses = pollen === "wind" || pollen === "insect";
  return crosses && draws.chance(0.4) ? draws.whole(0, 4) / 200 : null;
}
