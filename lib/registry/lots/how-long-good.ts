import { yearsFromDayToDay } from "@/lib/science/dates/age-span";
import { addDays, type CivilDay, dayFromNumber, dayNumber } from "@/lib/science/dates/civil-day";
import type { Assumption } from "@/lib/science/outcome";
import type { ForecastPrior } from "@/lib/science/seed-life/forecast-model";
import { lifePrior } from "@/lib/science/seed-life/life-prior";
import { type StoragePrior, storagePrior } from "@/lib/science/seed-life/storage-prior";
import { type UsualLife, usualLife } from "@/lib/science/seed-life/usual-life";
import { type ViabilityForecast, viabilityForecast } from "@/lib/science/seed-life/viability-forecast";
import type { TestOfLot } from "../germination-tests/tests-of-lot";
import type { MoistureOfLot, StoreOfLot } from "./store-of-lot";

/** Why there is no forecast. */
export type NoForecast =
  | "kept by division"
  | "not stored dry"
  | "usual life not known"
  | "year not known"
  | "not worked out";

export interface Forecast {
  readonly forecast: ViabilityForecast;
  /** day on which the germination is likely to pass the line, and the days between which it does with 90 % */
  readonly until: { readonly likely: CivilDay; readonly low: CivilDay; readonly high: CivilDay };
  /** tests that were used, each with its years since the harvest */
  readonly used: readonly {
    readonly test: TestOfLot;
    readonly years: number;
    readonly sown: number;
    readonly normal: number;
  }[];
  /** tests that were not, because something else was counted as germinated, or before they were done */
  readonly leftOut: readonly TestOfLot[];
  readonly prior: ForecastPrior;
  /** null: nobody has written it, and how it is kept speaks alone */
  readonly usualLife: UsualLife | null;
  /** where the constants of its kind speak in the place of its usual life; else null */
  readonly kept: KeptSeed | null;
  /** readings that are missing for those to speak; none where they do, or where the kind has no constants */
  readonly wouldTell: readonly ("moisture" | "temperature")[];
  readonly assumed: readonly Assumption[];
}

/** How a lot is kept, what its kind's constants make of that, and what its usual life alone would have said. */
export interface KeptSeed extends Omit<StoragePrior, "prior" | "assumed"> {
  readonly store: StoreOfLot;
  readonly moisture: MoistureOfLot;
  readonly temperature: NonNullable<StoreOfLot["temperature"]>;
  /** null: the usual life is not known */
  readonly likelyByUsualLife: CivilDay | null;
}

export interface KeepingQuestion {
  /** null or left out: of its kind no constants are known */
  readonly store?: StoreOfLot | null;
  readonly tests: readonly TestOfLot[];
  readonly yearFirst: CivilDay | null;
  readonly yearLast: CivilDay | null;
  readonly crop: {
    readonly clonal: boolean;
    readonly dryStorage: boolean;
    readonly cropKey: string;
    readonly commonName: string;
    readonly seedLifeYearsMin: number | null;
    readonly seedLifeYearsMax: number | null;
    /** the seed life is the steward's own value, which goes before any table */
    readonly ownSeedLife: boolean;
  };
  /** germination (share) at which the lot is to be renewed */
  readonly threshold: number;
}

/**
 * Until when a lot is good: the day on which its germination is forecast to pass the line, from its own tests and what is known of its kind: what
 * the constants of the kind say of seed kept as this is, where its moisture and the warmth of its place were read, else the usual life of the
 * kind. Years are counted from the middle of the time in which it was harvested; tests on another basis than most of the lot's are left out.
 */
export function howLongGood(question: KeepingQuestion): Forecast | { readonly why: NoForecast } {
  const { crop, yearFirst, yearLast, threshold } = question;
  if (crop.clonal) return { why: "kept by division" };
  if (!crop.dryStorage) return { why: "not stored dry" };
  const life = usualLifeOf(crop);
  const byLife = life === null || life.low + life.high <= 0 ? null : lifePrior(life);
  const byStore = priorOfStore(question.store ?? null);
  const prior = byStore?.prior ?? byLife;
  if (prior === null) return { why: "usual life not known" };
  if (yearFirst === null || yearLast === null) return { why: "year not known" };
  const harvest = middleDay(yearFirst, yearLast);
  const { used, leftOut } = testsOnOneBasis(question.tests, harvest);
  const tests = used.map(({ years, sown, normal }) => ({ years, sown, normal }));
  const forecast = viabilityForecast({ tests, prior, threshold });
  if (!forecast.ok) return { why: "not worked out" };
  const { median, low, high } = forecast.value.yearsToThreshold;
  const until = {
    likely: afterYears(harvest, median),
    low: afterYears(yearFirst, low),
    high: afterYears(yearLast, high),
  };
  const alone = byStore && byLife ? viabilityForecast({ tests, prior: byLife, threshold }) : null;
  const likelyByUsualLife = alone?.ok ? afterYears(harvest, alone.value.yearsToThreshold.median) : null;
  return {
    forecast: forecast.value,
    until,
    used,
    leftOut,
    prior,
    usualLife: byLife ? life : null,
    kept: byStore ? { ...byStore.kept, likelyByUsualLife } : null,
    wouldTell: wouldTell(question.store ?? null),
    assumed: [...assumedOf(question, leftOut, byStore !== null), ...(byStore ? assumedOfStore(byStore) : [])],
  };
}

/** What the constants of its kind say of a lot; null where they cannot speak. */
function priorOfStore(store: StoreOfLot | null) {
  const { moisture, temperature } = store ?? {};
  if (!store || !moisture || !temperature) return null;
  const { constants } = store;
  const found = storagePrior({
    constants,
    moisturePercent: moisture.percent,
    temperatureC: temperature.celsius,
  });
  if (!found.ok) return null;
  const { prior, assumed, ...said } = found.value;
  return { prior, assumed, kept: { ...said, store, moisture, temperature } };
}

function assumedOfStore({ assumed, kept }: NonNullable<ReturnType<typeof priorOfStore>>): Assumption[] {
  const { longestYears, temperature } = kept;
  const taken: Assumption[] = [...assumed];
  if (longestYears !== null)
    taken.push({
      code: "longest-believed",
      text: `σ is no more than ${longestYears} years, whatever the equation says, for nobody has seen it hold longer`,
    });
  if (temperature.places > 1)
    taken.push({ code: "warmest-place", text: `all of it stands as warm as in ${temperature.place}` });
  return taken;
}

function wouldTell(store: StoreOfLot | null): Forecast["wouldTell"] {
  if (!store) return [];
  return [...(store.moisture ? [] : (["moisture"] as const)), ...(store.temperature ? [] : (["temperature"] as const))];
}

/** The steward's own value, else the table of storage lives, else the crop's profile. */
function usualLifeOf(crop: KeepingQuestion["crop"]): UsualLife | null {
  const profile = { low: crop.seedLifeYearsMin, high: crop.seedLifeYearsMax };
  if (crop.ownSeedLife) return usualLife({ profile: { ...profile, source: "your own value for the crop" } });
  return usualLife({ cropKey: crop.cropKey, commonName: crop.commonName, profile });
}

function testsOnOneBasis(tests: readonly TestOfLot[], harvest: CivilDay) {
  const sprouted = (test: TestOfLot) => test.basis === "sprouted";
  const counted = tests.filter((test) => test.germination !== null && test.totals.stage === "final");
  // Where nothing is said, whole seedlings were counted: the notebook's own column says "normal".
  const bySeedlings = counted.filter((test) => !sprouted(test));
  const basis = bySeedlings.length > 0 ? bySeedlings : counted;
  const used = basis.map((test) => ({
    test,
    years: Math.max(0, yearsFromDayToDay(harvest, middleDay(test.onFirst, test.onLast))),
    sown: test.totals.sown,
    normal: test.totals.sums.normal ?? 0,
  }));
  return { used, leftOut: tests.filter((test) => !basis.includes(test)) };
}

function assumedOf(
  { yearFirst, yearLast, tests }: KeepingQuestion,
  leftOut: readonly TestOfLot[],
  byStore: boolean,
): Assumption[] {
  const assumed: Assumption[] = [];
  if (yearFirst !== yearLast)
    assumed.push({
      code: "harvest-in-the-middle",
      text: "the seed was harvested in the middle of the time that is told",
    });
  if (tests.some((test) => test.basis === null && !leftOut.includes(test)))
    assumed.push({ code: "seedlings-counted", text: "where a test does not say, normal seedlings were counted" });
  assumed.push(
    byStore
      ? { code: "kept-alike", text: "it has been sealed since its harvest, at the moisture and the warmth of today" }
      : { code: "kept-as-usual", text: "it is kept cool and dry, as the usual life of the crop is meant" },
  );
  return assumed;
}

function middleDay(first: CivilDay, last: CivilDay): CivilDay {
  return dayFromNumber(Math.floor((dayNumber(first) + dayNumber(last)) / 2));
}

/** A day some years later; never beyond the calendar. */
function afterYears(day: CivilDay, years: number): CivilDay {
  const most = dayNumber("9999-12-31") - dayNumber(day);
  return addDays(day, Math.min(most, years * 365.2425));
}
