import { describe, expect, test } from "vitest";
import type { TestOfLot } from "@/lib/registry/germination-tests/tests-of-lot";
import { howLongGood, type KeepingQuestion } from "@/lib/registry/lots/how-long-good";
import type { StoreOfLot } from "@/lib/registry/lots/store-of-lot";

const testOf = (on: string, sown: number, normal: number, more: Partial<TestOfLot> = {}): TestOfLot => ({
  id: on,
  name: on,
  on,
  onFirst: on,
  onLast: on,
  basis: null,
  finalCountDay: null,
  totals: {
    sown,
    sums: { normal, abnormal: null, hard: null, fresh: null, dead: null },
    left: sown - normal,
    counted: true,
    lastDay: 14,
    stage: "final",
  },
  germination: { share: normal / sown, low: 0, high: 1 },
  ...more,
});

// A kind whose usual life is 5.6 years: ln(5.6/1.12) = ln 5, the prior of the seed-testing reference.
const crop = {
  clonal: false,
  dryStorage: true,
  cropKey: "none-of-the-list",
  commonName: "None of the list",
  seedLifeYearsMin: 5.6,
  seedLifeYearsMax: 5.6,
  ownSeedLife: true,
};

const ask = (tests: readonly TestOfLot[], more: Partial<KeepingQuestion> = {}) =>
  howLongGood({ tests, yearFirst: "2010-06-01", yearLast: "2010-06-01", crop, threshold: 0.75, ...more });

function forecast(answer: ReturnType<typeof howLongGood>) {
  if ("why" in answer) throw new Error(answer.why);
  return answer;
}

test("a lot's own tests bend the usual life of its kind", () => {
  // Tests after 0, 3, 6 and 9 years: 96/100, 47/50, 44/50, 78/100; to 75 % it is 8.4, 10.1 and 13.2 years at 5, 50 and 95 %
  // (seed-testing reference, section e, by a grid and by a second program).
  const answer = forecast(
    ask([
      testOf("2010-06-01", 100, 96),
      testOf("2013-06-01", 50, 47),
      testOf("2016-06-01", 50, 44),
      testOf("2019-06-01", 100, 78),
    ]),
  );
  expect(answer.used.map((each) => each.years)).toEqual([0, 3, 6, 9]);
  expect(answer.forecast.yearsToThreshold.median).toBeCloseTo(10.1, 1);
  expect([answer.until.low, answer.until.likely, answer.until.high].map((day) => day.slice(0, 4))).toEqual([
    "2018",
    "2020",
    "2023",
  ]);
});

test("without a test it is the usual life of the kind that speaks", () => {
  const answer = forecast(ask([]));
  expect(answer.used).toEqual([]);
  expect(answer.prior.lnSigmaYears).toEqual({ mean: Math.log(5), sd: 0.8 });
  // the prior's own middle: (1.65 − z(0.75)) · 5 = (1.65 − 0.6745) · 5 = 4.9 years
  expect(answer.forecast.yearsToThreshold.median).toBeCloseTo(4.9, 0);
});

test("tests that counted sprouts are left out beside those that counted seedlings, and so is one not yet done", () => {
  const running = testOf("2014-06-01", 50, 10);
  const answer = forecast(
    ask([
      testOf("2012-06-01", 50, 45),
      testOf("2013-06-01", 50, 48, { basis: "sprouted" }),
      { ...running, totals: { ...running.totals, stage: "running" } },
    ]),
  );
  expect(answer.used.map((each) => each.test.on)).toEqual(["2012-06-01"]);
  expect(answer.leftOut.map((test) => test.on)).toEqual(["2013-06-01", "2014-06-01"]);
});

test("a lot that was only ever tested by sprouts is forecast by them", () => {
  const answer = forecast(ask([testOf("2013-06-01", 50, 48, { basis: "sprouted" })]));
  expect(answer.used).toHaveLength(1);
});

test("a vague year of harvest counts from its middle and widens the days", () => {
  const answer = forecast(ask([testOf("2012-07-02", 50, 45)], { yearFirst: "2010-01-01", yearLast: "2010-12-31" }));
  expect(answer.used[0]?.years).toBeCloseTo(2, 2);
  expect(answer.assumed.map((each) => each.code)).toContain("harvest-in-the-middle");
});

test("no forecast where seed life means nothing or the age is not known", () => {
  expect(ask([], { crop: { ...crop, clonal: true } })).toEqual({ why: "kept by division" });
  expect(ask([], { crop: { ...crop, dryStorage: false } })).toEqual({ why: "not stored dry" });
  expect(ask([], { yearFirst: null, yearLast: null })).toEqual({ why: "year not known" });
  const nothing = { ...crop, seedLifeYearsMin: null, seedLifeYearsMax: null };
  expect(ask([], { crop: nothing })).toEqual({ why: "usual life not known" });
});

test("the steward's own seed life goes before the table of storage lives", () => {
  const leek = { ...crop, cropKey: "leek", commonName: "Leek", ownSeedLife: false };
  const table = forecast(ask([], { crop: leek })).usualLife;
  // two to three years by the storage lists
  expect([table?.low, table?.high]).toEqual([2, 3]);
  expect(forecast(ask([], { crop: { ...leek, ownSeedLife: true } })).usualLife?.low).toBe(5.6);
});

describe("seed of a kind whose constants are known", () => {
  // Wheat, Ellis & Hong 2007; 10 % at 20 °C is σ 686.1 days, 1.8785 years (seed-testing reference, section c).
  const store: StoreOfLot = {
    ...{ kind: "Wheat", constants: { KE: 8.498, CW: 4.836, CH: 0.0322, CQ: 0.000454 }, source: "of the test", own: [] },
    moisture: { percent: 10, on: "2010-09-01", from: null },
    temperature: { place: "shelf", celsius: 20, places: 1 },
  };

  test("is forecast by them, and what its usual life alone would say stands beside it", () => {
    const answer = forecast(ask([], { store }));
    expect(answer.prior.lnSigmaYears.mean).toBeCloseTo(Math.log(1.8785), 4);
    expect(answer.prior.lnSigmaYears.sd).toBe(1);
    // by the other program of tests/reference, summed over its grid: 0.132, 1.630 and 10.38 years
    expect(answer.forecast.yearsToThreshold.median).toBeCloseTo(1.63, 2);
    expect(answer.forecast.yearsToThreshold.high).toBeCloseTo(10.38, 1);
    expect(answer.kept).toMatchObject({ longestYears: null, moisture: { percent: 10 } });
    expect(answer.kept?.likelyByUsualLife).toBe(forecast(ask([])).until.likely);
    expect(answer.assumed.map(({ code }) => code)).toEqual(["kept-alike"]);
    expect(answer.wouldTell).toEqual([]);
  });

  test("and its own tests lead: after four of them both beginnings say the same year", () => {
    const tests = [
      testOf("2010-06-01", 400, 388),
      testOf("2013-06-01", 400, 376),
      testOf("2016-06-01", 400, 352),
      testOf("2019-06-01", 400, 312),
    ];
    const years = [ask(tests, { store }), ask(tests)].map((answer) => forecast(answer).until.likely.slice(0, 4));
    expect(years[0]).toBe(years[1]);
  });

  test("is not held to live longer than anybody has seen, and in several places as in the warmest", () => {
    const temperature = { place: "cellar", celsius: 5, places: 2 };
    const answer = forecast(
      ask([], { store: { ...store, moisture: { percent: 8, on: "2010-09-01", from: null }, temperature } }),
    );
    expect(answer.kept?.longestYears).toBe(15);
    expect(answer.assumed.map(({ code }) => code)).toEqual(["kept-alike", "longest-believed", "warmest-place"]);
  });

  test("goes by its usual life where a reading is missing, which is named", () => {
    const answer = forecast(ask([], { store: { ...store, moisture: null, temperature: null } }));
    expect(answer.kept).toBeNull();
    expect(answer.wouldTell).toEqual(["moisture", "temperature"]);
    expect(forecast(ask([], { store: { ...store, temperature: null } })).wouldTell).toEqual(["temperature"]);
  });

  test("has a forecast where nobody wrote its usual life", () => {
    const nothing = { ...crop, seedLifeYearsMin: null, seedLifeYearsMax: null };
    const answer = forecast(ask([], { store, crop: nothing }));
    expect([answer.usualLife, answer.kept?.likelyByUsualLife]).toEqual([null, null]);
  });
});
