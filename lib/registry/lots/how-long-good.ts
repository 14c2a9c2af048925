import { yearsFromDayToDay } from "@/lib/science/dates/age-span";
import { addDays, type CivilDay, dayFromNumber, dayNumber } from "@/lib/science/dates/civil-day";
import type { Assumption } from "@/lib/science/outcome";
import { lifePrior } from "@/lib/science/seed-life/life-prior";
import { type UsualLife, usualLife } from "@/lib/science/seed-life/usual-life";
import { type ViabilityForecast, viabilityForecast } from "@/lib/science/seed-life/viability-forecast";
import type { TestOfLot } from "../germination-tests/tests-of-lot";

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
  readonly prior: ReturnType<typeof lifePrior>;
  readonly usualLife: UsualLife;
  readonly assumed: readonly Assumption[];
}

export interface KeepingQuestion {
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
 * Until when a lot is good: the day on which its germination is forecast to pass the line, from its own tests and the usual life of its
 * kind. Years are counted from the middle of the time in which it was harvested; tests on another basis than most of the lot's are left out.
 */
export function howLongGood(question: KeepingQuestion): Forecast | { readonly why: NoForecast } {
  const { crop, yearFirst, yearLast, threshold } = question;
  if (crop.clonal) return { why: "kept by division" };
  if (!crop.dryStorage) return { why: "not stored dry" };
  const life = usualLifeOf(crop);
  if (life === null || life.low + life.high <= 0) return { why: "usual life not known" };
  if (yearFirst === null || yearLast === null) return { why: "year not known" };
  const harvest = middleDay(yearFirst, yearLast);
  const { used, leftOut } = testsOnOneBasis(question.tests, harvest);
  const prior = lifePrior(life);
  const tests = used.map(({ years, sown, normal }) => ({ years, sown, normal }));
  const forecast = viabilityForecast({ tests, prior, threshold });
  if (!forecast.ok) return { why: "not worked out" };
  const { median, low, high } = forecast.value.yearsToThreshold;
  const until = {
    likely: afterYears(harvest, median),
    low: afterYears(yearFirst, low),
    high: afterYears(yearLast, high),
  };
  return {
    forecast: forecast.value,
    until,
    used,
    leftOut,
    prior,
    usualLife: life,
    assumed: assumedOf(question, leftOut),
  };
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

function assumedOf({ yearFirst, yearLast, tests }: KeepingQuestion, leftOut: readonly TestOfLot[]): Assumption[] {
  const assumed: Assumption[] = [];
  if (yearFirst !== yearLast)
    assumed.push({
      code: "harvest-in-the-middle",
      text: "the seed was harvested in the middle of the time that is told",
    });
  if (tests.some((test) => test.basis === null && !leftOut.includes(test)))
    assumed.push({ code: "seedlings-counted", text: "where a test does not say, normal seedlings were counted" });
  assumed.push({ code: "kept-as-usual", text: "it is kept cool and dry, as the usual life of the crop is meant" });
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
