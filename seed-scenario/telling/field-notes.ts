import { addDays, type CivilDay, daysBetween } from "@/lib/science/dates/civil-day";
import type { CropHabit, CropKey } from "../circle/crop-habits";
import { isolationWays, neighboursOf } from "../circle/neighbours";
import { yearTold } from "../circle/weather";
import type { Book } from "./book";
import { yearOf } from "./calendar";
import { Draws } from "./draws";
import { firstFlower, type GrowOut } from "./grow-out";

/** The last day that is told of. */
export const lastDayTold: CivilDay = "2026-11-20";

/**
 * What was noted of a grow-out in the field: counts by stage, rogue passes, flowering, neighbours, isolation, the weather. True where
 * somebody looked around for neighbours.
 */
export function fieldNotes(book: Book, growOut: GrowOut, crop: CropKey, habit: CropHabit, seenTo: CivilDay): boolean {
  const draws = new Draws(`field ${growOut.name}`);
  const year = yearOf(growOut.sown);
  if (year >= 2006 && draws.chance(0.6)) stageCounts(book, growOut, habit, seenTo, draws);
  const { words } = yearTold(growOut.harvestYear);
  if (words && `${growOut.harvestYear}-08-31` <= seenTo && draws.chance(0.4)) {
    const on = String(growOut.harvestYear);
    book.write("observations.csv", { grow_out: growOut.name, on, words, steward: growOut.by.name });
  }
  return (
    (habit.pollen === "wind" || habit.pollen === "insect") && pollenNotes(book, growOut, crop, habit, seenTo, draws)
  );
}

/** Flowering, and what could have sent pollen. */
function pollenNotes(
  book: Book,
  growOut: GrowOut,
  crop: CropKey,
  habit: CropHabit,
  seenTo: CivilDay,
  draws: Draws,
): boolean {
  const year = yearOf(growOut.sown);
  if (year >= 2009 && draws.chance(0.6)) flowering(book, growOut, crop, habit, seenTo, draws);
  const seen = year >= 1999 && draws.chance(0.55);
  const kept = draws.chance(0.5);
  // Where the story tells of foreign pollen, the story says what stood there too.
  if ((growOut.sowing.foreign ?? 0) > 0.02) return false;
  if (seen) neighbours(book, growOut, crop, habit, seenTo, draws);
  if (kept) isolation(book, growOut, crop, habit, seenTo, draws, seen);
  // In some years somebody walked round and found nothing that could have crossed.
  const walkedRound = seen || (year >= 2010 && new Draws(`walked round ${growOut.name}`).chance(0.3));
  return walkedRound && firstFlower(growOut, habit) <= seenTo;
}

/** Writes the rogue passes up to a day, and gives how many plants they have pulled before and after the pollen flew. */
export function roguePasses(
  book: Book,
  growOut: GrowOut,
  habit: CropHabit,
  seenTo: CivilDay,
): { before: number; after: number } {
  const pulledSoFar = { before: 0, after: 0 };
  const { counts, by, name } = growOut;
  const draws = new Draws(`rogue ${name}`);
  const flower = firstFlower(growOut, habit);
  const grown = daysBetween(growOut.sown, flower);
  let left = counts.standing;
  const pass = (on: CivilDay, stage: string, timing: "before" | "after", pulled: number) => {
    if (on > seenTo) return;
    const looked = left;
    left -= pulled;
    pulledSoFar[timing] += pulled;
    const reason = pulled === 0 ? null : (growOut.sowing.pulledFor ?? draws.pick(habit.pulledFor));
    const note = pulled === 0 ? "walked, none found" : null;
    book.write("rogue_passes.csv", {
      grow_out: name,
      on,
      stage,
      timing,
      looked,
      pulled,
      reason,
      left,
      steward: by.name,
      note,
    });
  };
  const inAutumn = habit.yearsToSeed === 1 && !habit.autumnSown;
  const { winterCounted } = growOut.sowing;
  const early = Math.floor(counts.before * draws.near(0.5, 0.5));
  if (winterCounted) pass(winterCounted, "after winter", "before", counts.before);
  else if (counts.before > 0 || draws.chance(0.5)) {
    pass(addDays(growOut.sown, Math.round(grown * 0.36)), inAutumn ? "first autumn" : "leaf", "before", early);
    pass(addDays(flower, -draws.whole(3, 9)), "before flower", "before", counts.before - early);
  }
  if (counts.after > 0) pass(addDays(flower, draws.whole(14, 30)), "after", "after", counts.after);
  return pulledSoFar;
}

function stageCounts(book: Book, growOut: GrowOut, habit: CropHabit, seenTo: CivilDay, draws: Draws): void {
  const { counts, name, by } = growOut;
  const flower = firstFlower(growOut, habit);
  const count = (stage: string, on: CivilDay, plants: number, more: object = {}) => {
    if (on <= seenTo) book.write("stage_counts.csv", { grow_out: name, stage, plants, on, steward: by.name, ...more });
  };
  count("sown", growOut.sown, counts.seeds);
  count("up", addDays(growOut.sown, 21), counts.up);
  if (counts.up > counts.standing)
    count("thinned", addDays(growOut.sown, 34), counts.standing, {
      thinned_by: draws.pick(["random", "random", "vigour"]),
    });
  count("standing", addDays(growOut.sown, 40), counts.standing);
  count("flowering", addDays(flower, 8), counts.standing - counts.before, { males: counts.males });
}

function flowering(
  book: Book,
  growOut: GrowOut,
  crop: CropKey,
  habit: CropHabit,
  seenTo: CivilDay,
  draws: Draws,
): void {
  const first = addDays(firstFlower(growOut, habit), draws.whole(-4, 4));
  const organs = crop === "maize-field" ? (["pollen", "silk"] as const) : (["flower"] as const);
  organs.forEach((organ, place) => {
    const begins = addDays(first, place * 3);
    const moments = [
      ["first", 0],
      ["half", draws.whole(4, 8)],
      ["last", draws.whole(15, 24)],
    ] as const;
    for (const [moment, days] of moments) {
      const on = addDays(begins, days);
      if (on <= seenTo && (moment !== "last" || draws.chance(0.8)))
        book.write("flowering.csv", { grow_out: growOut.name, organ, moment, on, steward: growOut.by.name });
    }
  });
}

function neighbours(
  book: Book,
  growOut: GrowOut,
  crop: CropKey,
  habit: CropHabit,
  seenTo: CivilDay,
  draws: Draws,
): void {
  const all = neighboursOf(crop);
  const flower = firstFlower(growOut, habit);
  if (flower > seenTo) return;
  const seen = draws.chance(0.35) ? all : [draws.pick(all)];
  for (const { what, crop: theirs, metres, square, plants, sure } of seen) {
    const opens = addDays(flower, draws.whole(-12, 14));
    book.write("neighbours.csv", {
      grow_out: growOut.name,
      crop: theirs,
      what,
      distance_metres: draws.whole(metres[0] / 10, metres[1] / 10) * 10,
      bearing: draws.pick(["N", "NE", "E", "SE", "S", "SW", "W", "NW"]),
      size_m2: square && draws.whole(square[0] / 100, square[1] / 100) * 100,
      plants: plants && draws.whole(plants[0], plants[1]),
      window_first: opens,
      window_last: addDays(opens, draws.whole(12, 26)),
      how_sure: sure,
    });
  }
}

/** Nobody claims distance where a neighbour was seen. */
function isolation(
  book: Book,
  growOut: GrowOut,
  crop: CropKey,
  habit: CropHabit,
  seenTo: CivilDay,
  draws: Draws,
  neighbourSeen: boolean,
): void {
  const ways = (isolationWays[crop] ?? []).filter(([method]) => !neighbourSeen || method !== "distance");
  const flower = firstFlower(growOut, habit);
  if (ways.length === 0 || flower > seenTo) return;
  const [method, evidence] = draws.pick(ways);
  const covered = method === "cage" || method === "bags";
  book.write("isolation.csv", {
    grow_out: growOut.name,
    method,
    evidence,
    from_on: covered ? addDays(flower, -6) : null,
    to_on: covered ? addDays(flower, 34) : null,
  });
}
