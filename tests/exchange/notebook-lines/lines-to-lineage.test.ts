import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { linesToLineage } from "@/lib/exchange/notebook-lines/lines-to-lineage";
import { readNotebookLines } from "@/lib/exchange/notebook-lines/read-notebook-line";
import { EVENTS, GROW_OUTS, NOT_OVER_READ, YEARS } from "./lines";

const lineage = (...lines: string[]) => linesToLineage(readNotebookLines(lines, { today: "2026-03-01" }));

/** A notebook of our own invention; what it must come to is worked out by hand beside the words. */
const NOTEBOOK = [
  "1988, from my aunt's jar, about 40 plants, kept from 12, got 300 g",
  "89 nothing sown",
  "1990, sowed 60 seeds, 45 plants, pulled 5 before pollen and pulled 3 after flowering, kept all, same from each",
  "1991, gave 50 g to Tarn",
  "1992, lost to hail",
  "1993, from the 1988 seed, 18/20, 30-40 plants, saved from the best 9",
  "1995, mixed with the 1990 seed",
  "1996, got back from Osk, a handful",
  "1997, split the jar with Wend",
  "1998, weighed 120 g, the blue shed",
];

describe("the lines of a notebook become a lineage", () => {
  const chain = lineage(...NOTEBOOK);

  it("of lots with their kinds, years and makers", () => {
    expect(chain.lots.map((lot) => [lot.line, lot.kind, lot.name, lot.year, lot.growOut])).toEqual([
      [0, "founder", "my aunt's jar", null, null],
      [0, "harvest", "1988", "1988", "grow-out 1988"],
      [2, "harvest", "1990", "1990", "grow-out 1990"],
      [5, "harvest", "1993", "1993", "grow-out 1993"],
      [6, "blend", "1995 blend", "1995", null],
      [7, "founder", "Osk", null, null],
      [8, "split", "Osk with Wend", null, null],
    ]);
  });

  it("of grow-outs with what was sown, counted and assumed", () => {
    expect(chain.growOuts.map((one) => [one.name, one.parents.map((parent) => [parent.lot, parent.assumed])])).toEqual([
      ["grow-out 1988", [["my aunt's jar", false]]],
      ["grow-out 1990", [["1988", true]]],
      ["grow-out 1992", [["1990", true]]],
      ["grow-out 1993", [["1988", false]]],
    ]);
    const [, second, third, fourth] = chain.growOuts;
    // 45 stood, 5 pulled before and 3 after pollen shed, so that "all" is 37
    expect(second).toMatchObject({
      plantsStanding: { value: 45 },
      roguedBeforePollen: { value: 5 },
      roguedAfterPollen: { value: 3 },
      roguedUntimed: null,
      seedParents: { value: 37, words: "all" },
      seedShares: "equal",
      foreignPollen: null,
      outcome: null,
      lot: "1990",
    });
    expect(second?.assumed.map((one) => one.code)).toEqual(["usual-seed", "all-plants-kept"]);
    expect(third).toMatchObject({ outcome: "hail", lot: null, seedParents: null, plantsStanding: null });
    expect(fourth).toMatchObject({
      plantsStanding: { value: null, low: 30, high: 40 },
      seedParents: { value: 9 },
      seedShares: null,
    });
  });

  it("of ledger entries with the lot, the amount and the other side", () => {
    expect(
      chain.ledger.map((one) => [one.on, one.kind, one.lot, one.lotAssumed, one.amount?.words ?? null, one.other]),
    ).toEqual([
      ["1988", "received", "my aunt's jar", false, null, "my aunt's jar"],
      ["1988", "harvested", "1988", false, "300 g", null],
      ["1990", "sown", "1988", true, "60", null],
      ["1991", "given", "1990", true, "50 g", "Tarn"],
      ["1996", "received", "Osk", false, "a handful", "Osk"],
      ["1998", "weighed", "Osk", true, "120 g", null],
    ]);
  });

  it("of tests, years without sowing, and words that stay words", () => {
    expect(chain.tests).toMatchObject([
      { line: 5, lot: "1988", on: "1993", up: { value: 18 }, of: { value: 20 }, bookable: true },
    ]);
    expect(chain.gaps).toEqual([{ line: 1, year: "1989", words: "89 nothing sown" }]);
    expect(chain.remarks).toEqual([{ line: 9, words: "the blue shed" }]);
  });

  it("of a blend whose parents' shares stay unknown", () => {
    const blend = chain.lots.find((lot) => lot.kind === "blend");
    expect(blend?.parents.map((parent) => [parent.lot, parent.share, parent.assumed])).toEqual([
      ["1993", null, true],
      ["1990", null, false],
    ]);
    expect(blend?.unknown).toEqual(["shares"]);
  });
});

describe("a lineage of lines", () => {
  it("of no lines is empty", () => {
    expect(lineage()).toEqual({ lots: [], growOuts: [], ledger: [], tests: [], gaps: [], remarks: [] });
  });

  it("doesn't make a test of a share or of words", () => {
    expect(lineage("1994, 30 plants, half came up").tests).toMatchObject([{ bookable: false, of: null }]);
    expect(lineage("1994, 30 plants, came up badly").tests).toEqual([]);
    expect(lineage("1994, 30 plants, came up badly").remarks).toEqual([{ line: 0, words: "came up badly" }]);
  });

  it("doesn't count all plants where one number is missing", () => {
    expect(lineage("1994, 30 plants, rogued, kept all").growOuts[0]?.seedParents).toBeNull();
    expect(lineage("1994, kept all").growOuts[0]?.seedParents).toBeNull();
  });

  it("names each lot and grow-out once, names none that isn't there, and never makes a lot its own ancestor", () => {
    const words = [...GROW_OUTS, ...EVENTS, ...YEARS, ...NOT_OVER_READ].map(([line]) => line);
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...words), { maxLength: 12 }), (lines) => {
        const { lots, growOuts, ledger, tests } = lineage(...lines);
        const names = lots.map((lot) => lot.name);
        expect(new Set(names).size).toBe(names.length);
        expect(new Set(growOuts.map((one) => one.name)).size).toBe(growOuts.length);
        const used = [
          ...ledger.map((one) => one.lot),
          ...tests.map((one) => one.lot),
          ...growOuts.flatMap((one) => one.parents.map((parent) => parent.lot)),
        ];
        for (const name of used) expect(names).toContain(name);
        const placeOf = new Map(names.map((name, place) => [name, place]));
        for (const lot of lots) {
          const parents =
            lot.growOut === null ? lot.parents : (growOuts.find((one) => one.name === lot.growOut)?.parents ?? []);
          for (const parent of parents) expect(placeOf.get(parent.lot)).toBeLessThan(placeOf.get(lot.name) ?? -1);
        }
      }),
      { numRuns: 300 },
    );
  });
});
