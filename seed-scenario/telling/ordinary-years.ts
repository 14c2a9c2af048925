import type { CivilDay } from "@/lib/science/dates/civil-day";
import { silent } from "../circle/letters";
import { type PersonName, person } from "../circle/people";
import { dayBetween, yearOf } from "./calendar";
import type { Draws } from "./draws";
import { lastDayTold } from "./field-notes";
import type { GrowOut } from "./grow-out";
import type { Jar } from "./jar";
import { sendLetter } from "./letter";
import type { Telling } from "./telling";
import type { Keeper, TurningPoint } from "./variety-history";

/** What a jar must have alive to be sown without a second thought. */
const goodEnough = 0.45;

/**
 * Tells the years one after the other: tests and clearing out in winter, sowing, harvest, and seed given on in November. What a year
 * brought besides stands in the turning points.
 */
export function tellYears(
  tell: Telling,
  [from, to]: readonly [number, number],
  keepers: readonly Keeper[],
  turningPoints: Readonly<Record<number, TurningPoint>> = {},
): void {
  for (let year = from; year <= to; year++) {
    tell.year = year;
    const turning = turningPoints[year] ?? {};
    sendLetter(tell, year);
    winter(tell, year);
    turning.winter?.(tell);
    turning.spring?.(tell);
    const due = turning.alone ? [] : keepers.filter((keeper) => isDue(keeper, year));
    if (!tell.habit.autumnSown) for (const keeper of due) growAgain(tell, keeper, year);
    handOut(tell, year);
    const harvested = harvestRipe(tell, year);
    if (tell.habit.autumnSown) for (const keeper of due) growAgain(tell, keeper, year);
    turning.autumn?.(tell);
    giveOn(tell, year, keepers, harvested);
    turning.november?.(tell);
  }
}

function isDue({ from, to = 2026, every, first = from }: Keeper, year: number): boolean {
  return year >= from && year <= to && year >= first && (year - first) % every === 0;
}

// ---------------------------------------------------------------------------------------------- winter

function winter(tell: Telling, year: number): void {
  for (const jar of tell.jarsOf(undefined, true)) {
    const draws = tell.draws(`winter ${jar.lot} ${year}`);
    if (silent(jar.holder.name, tell.variety.word, year) || year > jar.holder.years[1]) continue;
    const day = dayBetween(year, ["01-10", "02-24"], draws);
    if (day <= jar.lastDay) continue;
    if (isTestDue(tell, jar, day, year) && draws.chance(careOf(year)) && jar.seeds >= 40) tell.test(jar, day);
    if (draws.chance(0.12)) tell.weigh(jar, tell.written(jar.holder, day), shown(jar.grams * draws.near(0.985, 0.012)));
  }
  clearOut(tell, year);
}

/** Tested more often from decade to decade; since 2025 whatever would be due before the next winter. */
function isTestDue(tell: Telling, jar: Jar, day: CivilDay, year: number): boolean {
  if (tell.habit.pollen === "none") return false;
  if (jar.tested === null) return true;
  const untested = tell.yearsUntested(jar, day);
  if (jar.holder.kind === "genebank") return untested > (year === 2026 ? 0.9 : 4.4);
  if (year >= 2025) return untested + 0.8 > tell.habit.testedEvery;
  const patience = year < 2000 ? 2.6 : year < 2010 ? 2 : year < 2018 ? 1.4 : 1;
  return untested > tell.habit.testedEvery * patience - 0.15;
}

/** How many of the tests that were due were set up. */
function careOf(year: number): number {
  return year >= 2026 ? 0.93 : year >= 2020 ? 0.72 : 0.6;
}

/** A balance as somebody writes it who reads it off a scale. */
function shown(grams: number): number {
  return grams >= 20 ? Math.round(grams * 10) / 10 : Math.floor(grams * 100) / 100;
}

/** Old jars go when there are two newer ones, or one newer and hardly any life in the old. */
function clearOut(tell: Telling, year: number): void {
  const holders = new Set(tell.jarsOf().map((jar) => jar.holder.name));
  for (const holder of holders) {
    const held = tell.jarsOf(holder);
    held.forEach((jar, newer) => {
      if (jar.kept || jar.holder.kind === "genebank") return;
      if (silent(holder, tell.variety.word, year) || year > jar.holder.years[1]) return;
      const draws = tell.draws(`clear ${jar.lot} ${year}`);
      const why = whyCleared(tell, jar, newer, year, draws);
      if (why) tell.discard(jar, tell.written(jar.holder, dayBetween(year, ["03-02", "03-14"], draws)), why);
    });
  }
}

function whyCleared(tell: Telling, jar: Jar, newer: number, year: number, draws: Draws): string | null {
  if (tell.habit.pollen === "none") return jar.harvested < `${year}-01-01` ? "eaten" : null;
  const line = newer === 0 ? 0.12 : year < 2022 ? 0.3 : 0.55;
  if (jar.tested && jar.tested.share < line) return "too little of it alive; on the compost";
  if (newer > 0 && jar.seeds < 12) return "a last handful, sown in the border";
  return newer > 1 && draws.chance(0.85) ? draws.pick(whereOldSeedGoes(tell)) : null;
}

function whereOldSeedGoes(tell: Telling): readonly string[] {
  const grain = ["maize-field", "rye", "pea", "amaranth-grain"].includes(tell.variety.crop);
  return grain ? ["to the hens", "emptied for newer seed"] : ["emptied for newer seed", "on the compost"];
}

// ---------------------------------------------------------------------------------------------- spring and autumn

function growAgain(tell: Telling, keeper: Keeper, year: number): void {
  const parents = parentsFor(tell, keeper, year);
  if (!parents) return;
  const draws = tell.draws(`again ${keeper.who} ${year}`);
  const plot = keeper.plots ? draws.pick(keeper.plots) : undefined;
  tell.sow({ by: keeper.who, from: parents, plants: keeper.plants, plot });
}

/** The keeper's own newest good jar, now and then with an older one; else seed asked of somebody else. */
function parentsFor(
  tell: Telling,
  { who, plants }: Keeper,
  year: number,
): readonly (Jar | readonly [Jar, number])[] | null {
  const day = `${year}-${tell.habit.sown[0]}`;
  const enough = (jar: Jar, part: number) =>
    jar.lastDay <= day && jar.living(day) >= goodEnough && jar.grams >= tell.gramsToGrow(jar, day, plants) * part;
  const own = tell.jarsOf(who).filter((jar) => enough(jar, 1));
  const [newest, second] = own;
  if (newest && second && tell.draws(`mixed ${who} ${year}`).chance(0.16))
    return [
      [newest, 0.6],
      [second, 0.4],
    ];
  if (newest) return [newest];
  const [small] = tell.jarsOf(who).filter((jar) => enough(jar, 0.6));
  if (small) return [small];
  const [other] = tell.jarsOf().filter((jar) => jar.holder.name !== who && enough(jar, 1.5));
  if (!other) return null;
  const asked = dayBetween(
    year,
    tell.habit.autumnSown ? ["09-20", "09-28"] : ["03-20", "03-25"],
    tell.draws(`asked ${who} ${year}`),
  );
  const grams = tell.gramsToGrow(other, day, plants) * 1.3;
  return [
    tell.give(other, { to: who, on: asked, grams: Math.min(grams, other.grams * 0.6), purpose: "to grow again" }),
  ];
}

function harvestRipe(tell: Telling, year: number): { growOut: GrowOut; jar: Jar }[] {
  const ripe = tell.standing.filter((growOut) => growOut.harvestYear === year && !growOut.sowing.standsOn);
  for (const growOut of ripe) tell.standing.splice(tell.standing.indexOf(growOut), 1);
  return ripe
    .filter(() => `${year}-${tell.habit.harvested[1]}` <= lastDayTold)
    .map((growOut) => ({ growOut, jar: tell.harvest(growOut) }));
}

// ---------------------------------------------------------------------------------------------- giving

/** Whoever keeps it passes some of the new seed on, each time to the next of the list. */
function giveOn(
  tell: Telling,
  year: number,
  keepers: readonly Keeper[],
  harvested: readonly { growOut: GrowOut; jar: Jar }[],
): void {
  for (const { growOut, jar } of harvested) {
    const keeper = keepers.find(({ who, from, to = 2026 }) => who === growOut.by.name && from <= year && year <= to);
    const present = (keeper?.gives ?? [])
      .filter((name) => person(name).years[0] <= year && year <= person(name).years[1])
      .filter((name) => !silent(name, tell.variety.word, year));
    const draws = tell.draws(`give ${jar.lot}`);
    const wanting = present.filter((name) => wants(tell, name, year));
    const [to] = wanting;
    if (!to || jar.apart || !draws.chance(0.85)) continue;
    tell.give(jar, {
      to,
      on: dayBetween(year, ["11-03", "11-18"], draws),
      told: draws.chance(0.4) ? toldOf(tell) : undefined,
    });
  }
}

/** Growers want seed when theirs is three years old, a library after two, a store after eight. */
function wants(tell: Telling, name: PersonName, year: number): boolean {
  const [newest] = tell.jarsOf(name);
  const patience = { grower: 3, library: 2, genebank: 8 }[person(name).kind];
  return !newest || year - yearOf(newest.harvested) >= patience;
}

function toldOf(tell: Telling): string {
  const { pollen, plants } = tell.habit;
  if (pollen === "self") return "easy to keep; a few plants are enough, and some seed back is welcome";
  if (pollen === "none") return "plant the biggest cloves, eat the rest";
  return `it crosses: keep it apart, and grow at least ${Math.round((plants * 0.6) / 10) * 10} plants for seed`;
}

/** Packets over the counter of the library in April. */
function handOut(tell: Telling, year: number): void {
  const library = person("Gannerby Reading Room");
  const [jar] = tell.jarsOf(library.name);
  if (!jar || jar.living(`${year}-04-20`) < goodEnough) return;
  const draws = tell.draws(`counter ${year}`);
  const packets = draws.whole(2, 7);
  const grams = shown(
    Math.min(jar.grams * 0.2, (packets * Math.max(8, tell.habit.plants * 0.4) * jar.seedWeight) / 1000),
  );
  const on = dayBetween(year, ["04-18", "05-12"], draws);
  if (grams < 0.02 || jar.lastDay > on) return;
  tell.handOut(jar, on, grams, "readers", `${packets} packets over the counter`);
}
