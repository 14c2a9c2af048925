import { addDays, type CivilDay } from "@/lib/science/dates/civil-day";
import type { CropHabit } from "../circle/crop-habits";
import { yearTold } from "../circle/weather";
import { yearOf } from "./calendar";
import { Draws } from "./draws";
import { lastDayTold } from "./field-notes";
import { firstFlower, type GrowOut } from "./grow-out";
import { type Jar, weighed } from "./jar";
import type { Telling } from "./telling";

/** Roots and bulbs that are lifted in autumn and set out again in spring, in another bed. */
const lifted: readonly string[] = ["carrot", "beet", "onion"];

/** What the plan asked for, how long the plants were kept for, which tassels were taken, and whether somebody looked around. */
export function tellPlan(tell: Telling, growOut: GrowOut, lookedOn: CivilDay | null): void {
  const { sowing, name, harvestYear } = growOut;
  const draws = new Draws(`plan ${name}`);
  const planned = yearOf(growOut.sown) >= 2008 && draws.chance(0.7) ? (sowing.plants ?? tell.habit.plants) : null;
  const ends: CivilDay = addDays(`${harvestYear}-${tell.habit.harvested[1]}`, draws.whole(2, 12));
  const over = sowing.outcome === undefined && sowing.standsOn !== true && ends <= lastDayTold;
  const line = {
    purpose: sowing.purpose ?? (sowing.note || planned !== null ? "renew" : null),
    note: sowing.note ?? null,
    plants_planned: planned,
    seed_parents_planned: planned === null ? null : Math.max(1, Math.round(planned * tell.habit.seedParents)),
    detasselled: sowing.detasselled?.plants ?? null,
    seed_parents_detasselled: sowing.detasselled?.seedParents ?? null,
    neighbours_looked_on: lookedOn,
    ended_on: over && yearOf(growOut.sown) >= 2000 ? ends : null,
    foreign_pollen_how: sowing.foreignHow ?? null,
  };
  if (Object.values(line).some((value) => value !== null))
    tell.book.write("grow_out_details.csv", { grow_out: name, ...line });
}

/** The two beds of roots that were lifted and replanted, with how many; they wintered in sand. */
export function tellReplanting(tell: Telling, growOut: GrowOut, plot: string): void {
  const { name, by, counts, sown } = growOut;
  const year = yearOf(sown);
  if (!lifted.includes(tell.variety.crop) || year < 2006 || growOut.sowing.winterCounted) return;
  const draws = new Draws(`replanted ${name}`);
  if (draws.chance(0.35)) return;
  const out: CivilDay = `${year}-10-${draws.whole(12, 29)}`;
  const back: CivilDay = `${year + 1}-03-${draws.whole(14, 30)}`;
  const early = Math.floor(counts.before * new Draws(`rogue ${name}`).near(0.5, 0.5));
  const roots = counts.standing - early;
  const write = (stage: "lifted" | "replanted", on: CivilDay, note: string) => {
    if (on <= lastDayTold)
      tell.book.write("stage_counts.csv", { grow_out: name, stage, plants: roots, on, steward: by.name, note });
  };
  const other = by.plots.find((each) => each !== plot) ?? plot;
  if (out > lastDayTold) return;
  tell.book.write("grow_out_plots.csv", { grow_out: name, plot: `${plot} (${by.name})`, from_on: sown, to_on: out });
  write("lifted", out, "laid in sand, sound ones only");
  write("replanted", back, "crowns level with the soil");
  if (other !== plot && back <= lastDayTold)
    tell.book.write("grow_out_plots.csv", {
      grow_out: name,
      plot: `${other} (${by.name})`,
      from_on: back,
      to_on: null,
    });
}

/** How the seed was taken: by whom of the plants, put together how, and how mouldy in a wet year. */
export function tellHarvest(tell: Telling, growOut: GrowOut, jar: Jar, on: string, grams: number): void {
  const { name, shares, counts, harvestYear, sowing } = growOut;
  const draws = new Draws(`taken ${jar.lot}`);
  if (harvestYear < 2001 && draws.chance(0.7)) return;
  const wet = harvestYear === 2007 || harvestYear === 2012;
  const ears = tell.variety.crop === "maize-field" || tell.variety.crop === "rye";
  tell.book.write("harvests.csv", {
    grow_out: name,
    lot: jar.lot,
    on,
    bulked: shares === "equal" ? draws.pick(["equal seeds", "equal seeds", "equal weight"]) : "all together",
    seed_parents: sowing.unwritten?.includes("seed_parents") ? null : counts.seedParents,
    grams,
    detasselled: sowing.detasselled?.seedParents ?? null,
    mouldy_share: ears && (wet || draws.chance(0.4)) ? draws.whole(wet ? 3 : 0, wet ? 11 : 2) / 100 : null,
    note: wet && ears ? "mouldy ears put apart unopened, and none of it ground" : null,
  });
}

/** Each seed parent's bag, where they were weighed one by one. */
export function tellBags(tell: Telling, growOut: GrowOut, grams: readonly number[]): void {
  const [jar] = growOut.lots;
  if (!jar) return;
  for (const [place, each] of grams.entries()) {
    const plant = String(place + 1);
    tell.book.write("harvest_seed_parents.csv", { harvest: jar.lot, grow_out: growOut.name, plant, grams: each });
  }
}

/** What the shed notes of a lot when it comes in: a hundred seeds on the scales, the card in the jar, the days it lay to dry. */
export function tellShed(tell: Telling, jar: Jar, day: CivilDay, habit: CropHabit, grams: number): void {
  const draws = new Draws(`shed ${jar.lot}`);
  const year = yearOf(day);
  const { lot } = jar;
  if (year >= 2012 && draws.chance(0.4)) {
    for (let round = 0; round < 2; round++) {
      const hundred = Number(((jar.seedWeight / 10) * draws.near(1, 0.03)).toPrecision(3));
      const on = addDays(day, 24);
      if (on <= lastDayTold) tell.book.write("seed_weighings.csv", { lot, on, seeds: 100, grams: hundred });
    }
  }
  const dried = addDays(day, draws.whole(9, 26));
  if (year >= 2014 && habit.seedWeight > 20 && draws.chance(0.35) && dried <= lastDayTold) {
    const [from, to] = [draws.whole(14, 19), draws.whole(8, 10)];
    tell.book.write("dryings.csv", {
      lot,
      on: day,
      start_grams: weighed((grams * (100 - to)) / (100 - from)),
      start_percent: from,
      target_percent: to,
      end_grams: grams,
      days: draws.whole(7, 20),
    });
  }
  if (year >= 2015 && draws.chance(0.35) && dried <= lastDayTold)
    tell.book.write("moisture_readings.csv", {
      lot,
      on: dried,
      relative_humidity_percent: draws.whole(24, 46) - (yearTold(year).harvest > 1 ? 4 : 0),
      method: "humidity card",
      temperature_c: draws.whole(14, 21),
    });
}

/** The day on which somebody walked round to see what else would flower, where anybody did. */
export function lookedAround(growOut: GrowOut, habit: CropHabit): CivilDay {
  return addDays(firstFlower(growOut, habit), -new Draws(`looked ${growOut.name}`).whole(6, 24));
}
