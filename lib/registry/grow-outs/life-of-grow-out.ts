import { type DaySpan, expectedDays } from "@/lib/science/crops/expected-days";
import { addYears, type CivilDay, civilDay, splitCivilDay } from "@/lib/science/dates/civil-day";
import type { Hemisphere } from "@/lib/science/dates/fuzzy-date";
import { parseDate } from "@/lib/science/dates/parse-date";
import { grouped } from "../change-set/grouped";
import type { EventOfGrowOut } from "./events-of-grow-out";
import type { GrowOutRead } from "./read-grow-out";
import { type WhereItStands, whereItStands } from "./where-it-stands";

export type StageOfLife =
  | "planned"
  | "sown"
  | "up"
  | "thinned"
  | "lifted"
  | "winter"
  | "replanted"
  | "flowering"
  | "harvest"
  | "ended";

/** One stage of a grow-out's own life: on record (counted), to be expected by the days of its crop (assumed), or not known. */
export interface LifeStage {
  readonly id: string;
  readonly stage: StageOfLife;
  readonly grade: "counted" | "assumed" | "unknown";
  /** the days that it can mean; null not known */
  readonly days: DaySpan | null;
  /** the date as it was written */
  readonly on: string | null;
  readonly plants: number | null;
  /** days after sowing, where no day of sowing is known yet */
  readonly afterSowing: { readonly min: number; readonly max: number } | null;
}

export interface LifeOfGrowOut {
  readonly stands: WhereItStands;
  readonly stages: readonly LifeStage[];
}

type Read = Pick<GrowOutRead, "growOut" | "variety" | "events" | "harvests" | "harvested">;

const none = { days: null, on: null, plants: null, afterSowing: null } as const;

/**
 * The life of a grow-out from plan to end: what is on record, what is to be expected of its crop (days from sowing; the winter of a biennial; a
 * perennial's next year), and what is not known. A stage that nobody wrote of a grow-out that is over is left out, but for its flowering
 * and its seed, as far as it lived to them.
 */
export function lifeOfGrowOut(read: Read, today: CivilDay, hemisphere: Hemisphere): LifeOfGrowOut {
  const stands = standingOf(read, today);
  const { growOut, variety } = read;
  const biennial = variety.crop.lifeCycle === "biennial";
  const sown = sownDays(read);
  const flower = expectedDays(sown, { min: variety.crop.daysToFlowerMin, max: variety.crop.daysToFlowerMax });
  const standing = stands.stage === "standing";
  const count = (stage: "up" | "thinned" | "lifted" | "replanted", open: boolean) => countStage(read, stage, open);
  const stages = [
    ...(stands.stage === "planned" || growOut.plantsPlanned !== null ? [plannedStage()] : []),
    sownStage(read),
    ...count("up", standing),
    ...count("thinned", standing && !variety.crop.clonal),
    ...count("lifted", standing && biennial),
    ...(biennial ? winterStage(sown, flower, hemisphere) : []),
    ...count("replanted", standing && biennial),
    ...inOrder([...floweringStages(read, stands, flower), ...harvestStages(read, stands, today)]),
    ...endStage(read, stands),
  ];
  return { stands, stages: stages.filter((stage) => mayHaveBeen(stage, growOut, stands)) };
}

/** Of a grow-out that is over nothing is expected after its end, and no flower where it gave no seed and nobody saw one. */
function mayHaveBeen({ grade, days }: LifeStage, growOut: Read["growOut"], stands: WhereItStands): boolean {
  if (stands.stage !== "over" || grade !== "assumed") return true;
  const end = spanOf(growOut.endedOn);
  if (end !== null) return days === null || days.first <= end.last;
  return growOut.outcome === null;
}

/** Whether it is planned, stands or is over, by all that is on record of it. */
export function standingOf(read: Read, today: CivilDay): WhereItStands {
  const { growOut, variety, events, harvests, harvested } = read;
  const days = [
    ...events.flatMap((event) =>
      event.kind === "isolation" || event.kind === "neighbour" ? [] : (spanOf(event.on)?.last ?? []),
    ),
    ...harvests.flatMap((harvest) => harvest.onLast ?? []),
    ...harvested.flatMap((lot) => lot.yearLast ?? []),
  ];
  const { sownFirst, sownLast, endedOn, outcome } = growOut;
  return whereItStands(
    {
      ...{ sownFirst, sownLast, endedOn, outcome },
      lifeCycle: variety.crop.lifeCycle,
      daysToSeedMax: variety.crop.daysToSeedMax,
      begun: days.length > 0 || harvested.length > 0 || harvests.length > 0 || growOut.plantsStanding !== null,
      lastSeen: days.sort().at(-1) ?? null,
    },
    today,
  );
}

function sownDays({ growOut }: Read): DaySpan | null {
  const { sownFirst, sownLast } = growOut;
  return sownFirst === null ? null : { first: sownFirst, last: sownLast ?? sownFirst };
}

function plannedStage(): LifeStage {
  return { id: "planned", stage: "planned", grade: "counted", ...none };
}

function sownStage(read: Read): LifeStage {
  const days = sownDays(read);
  const grade = days === null ? "unknown" : "counted";
  return { ...none, id: "sown", stage: "sown", grade, days, on: read.growOut.sown };
}

function countStage({ events }: Read, stage: "up" | "thinned" | "lifted" | "replanted", open: boolean): LifeStage[] {
  const counts = events.filter((event) => event.kind === "count" && event.what === stage);
  const last = counts.at(-1);
  if (!last) return open ? [{ ...none, id: stage, stage, grade: "unknown" }] : [];
  return [{ ...none, id: stage, stage, grade: "counted", days: spanOf(last.on), on: last.on, plants: last.plants }];
}

/** The winter that a biennial lives through between its sowing and its flower; the months are those of meteorology. */
function winterStage(sown: DaySpan | null, flower: DaySpan | null, hemisphere: Hemisphere): LifeStage[] {
  if (sown === null || flower === null) return [];
  const { year = 0 } = splitCivilDay(sown.first) ?? {};
  const winters = [year - 1, year, year + 1].map((each): DaySpan => {
    if (hemisphere === "south") return { first: civilDay(each, 6, 1), last: civilDay(each, 8, 31) };
    return { first: civilDay(each, 12, 1), last: civilDay(each + 1, 2, 28) };
  });
  const days = winters.find((winter) => winter.first > sown.first);
  // A biennial that is sown early in the year and flowers in the same one has no winter.
  return days && days.first < flower.last ? [{ ...none, id: "winter", stage: "winter", grade: "assumed", days }] : [];
}

/** Flowering as it was noted, a stage a year; where nobody noted it, as it is to be expected. */
function floweringStages(read: Read, stands: WhereItStands, expected: DaySpan | null): LifeStage[] {
  const seen = read.events.filter(
    (event) => event.kind === "flowering" || (event.kind === "count" && event.what === "flowering"),
  );
  const years = [...grouped(seen, (event) => (event.on ?? "").slice(0, 4))];
  if (years.length > 0) return years.map(([year, own]) => seenStage("flowering", year, own));
  const { daysToFlowerMin: min, daysToFlowerMax: max, clonal } = read.variety.crop;
  if (clonal) return [];
  const own = { id: "flowering", stage: "flowering" } as const;
  if (expected) return [{ ...none, ...own, grade: "assumed", days: expected }];
  const afterSowing = min === null || max === null ? null : { min, max };
  return stands.stage === "over" ? [] : [{ ...none, ...own, grade: "unknown", afterSowing }];
}

function seenStage(stage: StageOfLife, year: string, seen: readonly EventOfGrowOut[]): LifeStage {
  const spans = seen.flatMap((event) => spanOf(event.on) ?? []);
  const firsts = spans.map((span) => span.first).sort();
  const lasts = spans.map((span) => span.last).sort();
  const [first, last] = [firsts[0], lasts.at(-1)];
  const days = first !== undefined && last !== undefined ? { first, last } : null;
  const plants = seen.findLast((event) => event.kind === "count")?.plants ?? null;
  const on = seen.length === 1 ? (seen[0]?.on ?? null) : days === null ? null : `${days.first}/${days.last}`;
  return { ...none, id: `${stage} ${year}`, stage, grade: "counted", days, on, plants };
}

/** Each harvest on record, by its own day or by the year of the lot that it became; and the next one that is to be expected. */
function harvestStages(read: Read, stands: WhereItStands, today: CivilDay): LifeStage[] {
  const { harvests, harvested, variety } = read;
  const told = harvests.map((harvest): LifeStage => {
    const days = spanOf(harvest.on) ?? spanOf(harvested.find((lot) => lot.id === harvest.lotId)?.year ?? null);
    const own = { id: `harvest ${harvest.id}`, stage: "harvest", grade: "counted" } as const;
    return { ...none, ...own, days, on: harvest.on, plants: harvest.seedParents };
  });
  const byLots = harvested
    .filter((lot) => !harvests.some((harvest) => harvest.lotId === lot.id))
    .map((lot): LifeStage => {
      const own = { id: `harvest ${lot.id}`, stage: "harvest", grade: "counted" } as const;
      return { ...none, ...own, days: spanOf(lot.year), on: lot.year };
    });
  const done = [...told, ...byLots];
  return [...done, ...nextHarvest(read, stands, today, done, variety.crop.lifeCycle === "perennial")];
}

function nextHarvest(
  read: Read,
  stands: WhereItStands,
  today: CivilDay,
  done: readonly LifeStage[],
  perennial: boolean,
): LifeStage[] {
  if (stands.stage === "over" || (done.length > 0 && !perennial)) return [];
  const { daysToSeedMin: min, daysToSeedMax: max } = read.variety.crop;
  const first = expectedDays(sownDays(read), { min, max });
  const own = { id: "harvest next", stage: "harvest" } as const;
  if (first === null) {
    const afterSowing = stands.stage === "standing" || min === null || max === null ? null : { min, max };
    return [{ ...none, ...own, grade: "unknown", afterSowing }];
  }
  // The first window that is not behind the last harvest and not long past.
  const after =
    done
      .flatMap((each) => each.days?.last ?? [])
      .sort()
      .at(-1) ?? "";
  for (let years = 0; years < 60 && perennial; years += 1) {
    const days = { first: addYears(first.first, years), last: addYears(first.last, years) };
    if (days.first > after && days.last >= today) return [{ ...none, ...own, grade: "assumed", days }];
  }
  return [{ ...none, ...own, grade: "assumed", days: first }];
}

function endStage({ growOut }: Read, stands: WhereItStands): LifeStage[] {
  if (stands.stage !== "over") return [];
  const own = { id: "ended", stage: "ended" } as const;
  if (growOut.endedOn !== null)
    return [{ ...none, ...own, grade: "counted", days: spanOf(growOut.endedOn), on: growOut.endedOn }];
  return [{ ...none, ...own, grade: "unknown" }];
}

/** By their first day; those without one last, in their order. */
function inOrder(stages: readonly LifeStage[]): LifeStage[] {
  return [...stages].sort((a, b) => {
    const [one, other] = [a.days?.first ?? "9999", b.days?.first ?? "9999"];
    return one < other ? -1 : one > other ? 1 : 0;
  });
}

function spanOf(on: string | null): DaySpan | null {
  const date = on === null ? null : parseDate(on);
  return date?.ok ? { first: date.value.first, last: date.value.last } : null;
}
