import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readNotebookLine, readNotebookLines } from "@/lib/exchange/notebook-lines/read-notebook-line";
import type { LineReading } from "@/lib/exchange/notebook-lines/reading";
import { factInShort } from "./fact-in-short";
import { EVENTS, GROW_OUTS, type Line, NOT_OVER_READ, YEARS } from "./lines";
import { IN_SHORT } from "./lines-in-short";

const ALL: readonly Line[] = [...GROW_OUTS, ...EVENTS, ...YEARS, ...NOT_OVER_READ, ...IN_SHORT];

describe("a notebook line is read as a grower means it", () => {
  it.each(ALL.map(([words, kind, read, left = []]) => ({ words, kind, read, left })))("$words", (line) => {
    const reading = readNotebookLine(line.words, { earlier: [], today: "2026-03-01" });
    expect(reading.words).toBe(line.words);
    expect(reading.understood.map(factInShort)).toEqual(line.read);
    expect(reading.notUnderstood.map((span) => span.words)).toEqual(line.left);
    expect(reading.proposal.kind).toBe(line.kind);
  });

  it("in more than a hundred lines, none of them twice", () => {
    expect(new Set(ALL.map(([words]) => words)).size).toBe(ALL.length);
    expect(ALL.length).toBeGreaterThan(100);
  });
});

describe("what a line proposes", () => {
  const line = (words: string) => readNotebookLine(words).proposal;

  it("of the first line of a notebook stands beside its words, with what stays unknown", () => {
    expect(line("1994, from my aunt's jar, about 40 plants, kept from 12, came up badly")).toMatchObject({
      kind: "grow-out",
      year: "1994",
      plantsStanding: { value: 40, approximate: true, words: "about 40" },
      seedParents: { value: 12, approximate: false },
      rogues: [],
      harvested: [],
      received: { from: "my aunt's jar" },
      from: [{ lot: "my aunt's jar", assumed: false, share: null }],
      lots: [
        { name: "my aunt's jar", kind: "founder", year: null, firstSeen: "1994", assumed: false },
        { name: "1994", kind: "harvest", year: "1994" },
      ],
      germination: [{ how: "badly", isTest: false, lot: { lot: "my aunt's jar" } }],
      failure: null,
      unknown: ["seedsSown", "rogues", "seedShares", "harvested", "foreignPollen", "lotYear"],
    });
  });

  it("books a test once that is told as a count and as a percentage", () => {
    // 22 of 25 is 88 %
    expect(line("2025 germ test, 22/25 (88%)").germination).toMatchObject([{ up: { value: 22 }, of: { value: 25 } }]);
    expect(line("2025 germ test, 22/25 (80%)").germination).toHaveLength(2);
  });

  it("says that several years stand as one grow-out, and says nothing of a biennial's two", () => {
    const assumed = (words: string) => line(words).assumed.map((one) => one.code);
    expect(assumed("1988-92, about 50 plants each year, seed from 10")).toContain("years-as-one");
    expect(assumed("1988-89, 50 roots replanted, seed from 10")).not.toContain("years-as-one");
  });

  it("never has foreign pollen in numbers, whatever is suspected", () => {
    const proposal = line("2001, 40 plants, crossed with the neighbour's, kept from 12");
    expect(proposal.suspicions).toEqual(["crossed with the neighbour's"]);
    expect(proposal.unknown).toContain("foreignPollen");
  });

  it("takes ears for seed parents only as unknown plants", () => {
    const proposal = line("2001, from 12 ears");
    expect(proposal).toMatchObject({ seedParents: { value: 12 }, seedParentsCounted: "ears" });
    expect(proposal.unknown).toContain("seedParents");
  });

  // by hand: 3 oz = 3 · 28.349523125 g
  it("gives weights in grams and keeps the unit that was written", () => {
    const [amount] = line("2001, 30 plants, got 3 oz").harvested;
    expect(amount).toMatchObject({ words: "3 oz", value: 3, givenUnit: "oz", unit: "g" });
    expect(amount?.grams?.value).toBeCloseTo(85.048569375, 9);
  });

  it("adds what was left and what was pulled, and says so", () => {
    const proposal = line("2001, pulled 5, left 35 plants");
    expect(proposal.plantsStanding?.value).toBe(40);
    expect(proposal.assumed.map((one) => one.code)).toContain("standing-from-left-and-pulled");
  });

  it("takes lost plants off those planted out", () => {
    expect(line("1997, planted out 50, frost took 20, kept seed from 15").plantsStanding?.value).toBe(30);
    expect(line("1997, planted out 50, frost took some, kept seed from 15").plantsStanding).toBeNull();
  });

  it("has not failed where seed was kept all the same", () => {
    expect(line("2001, hail flattened everything, saved from 3 plants")).toMatchObject({
      kind: "grow-out",
      failure: null,
    });
    expect(line("2001, hail flattened everything")).toMatchObject({
      kind: "failed",
      failure: "hail",
      lots: [{ assumed: true }],
    });
    expect(line("2001, crop failed").failure).toBe("");
  });

  it("books a day of sowing only where it is said", () => {
    expect(line("2012, sown 12 May, 70 plants").sown).toBe("2012-05-12");
    expect(line("2012, sown in May, 70 plants").sown).toBe("2012-05");
    expect(line("2012, 12 May, 70 plants").sown).toBeNull();
  });
});

describe("a line leans on the lines before it", () => {
  function last(...lines: string[]): LineReading["proposal"] {
    const readings = readNotebookLines(lines, { today: "2026-03-01" });
    const proposal = readings.at(-1)?.proposal;
    if (proposal === undefined) throw new Error("no line");
    return proposal;
  }
  const parents = (proposal: LineReading["proposal"]) =>
    proposal.from.map((one) => `${one.lot}${one.assumed ? " (assumed)" : ""}`);

  it("and takes the youngest seed before it where none is named, as assumed", () => {
    expect(parents(last("1994, 40 plants, kept 12", "1995, 30 plants", "1997, 20 plants"))).toEqual(["1995 (assumed)"]);
    expect(parents(last("1997, 20 plants", "1994, 40 plants", "1999, 20 plants"))).toEqual(["1997 (assumed)"]);
    expect(parents(last("1994, 40 plants", "1995, lost to hail", "1996, 20 plants"))).toEqual(["1994 (assumed)"]);
  });

  it("and finds the named seed", () => {
    expect(parents(last("1991, 9 plants", "1994, 40 plants", "1996, from the 1991 seed, 20 plants"))).toEqual(["1991"]);
    expect(parents(last("1991, 9 plants", "1992, from last year's, 20 plants"))).toEqual(["1991"]);
    expect(parents(last("1991, 9 plants", "1994, 40 plants", "1996, from the old jar, 20 plants"))).toEqual([
      "before 1991 (assumed)",
    ]);
    expect(
      parents(last("1991, from Osk's jar, 9 plants", "1994, 40 plants", "1996, from Osk's jar, 20 plants")),
    ).toEqual(["Osk's jar (assumed)"]);
    expect(parents(last("1991, 9 plants", "1992, 8 plants", "1993, same seed again, 20 plants"))).toEqual([
      "1991 (assumed)",
    ]);
  });

  it("and draws a gap where no line has made the seed", () => {
    const first = last("1994, 40 plants");
    expect(first.lots[0]).toMatchObject({ name: "before 1994", kind: "founder", year: null, assumed: true });
    const named = last("1994, 40 plants", "1996, from the 1988 seed, 20 plants");
    expect(named.lots[0]).toMatchObject({ name: "1988", kind: "founder", year: "1988", assumed: true });
    expect(named.assumed.map((one) => one.code)).toContain("unwritten-seed");
  });

  it("and counts years from it", () => {
    expect(last("1994, 40 plants", "next year, 30 plants").year).toBe("1995");
    expect(last("1994, 40 plants", "two years later, 30 plants").year).toBe("1996");
    expect(last("1994, 40 plants", "same year, gave 20 g to Tarn")).toMatchObject({
      kind: "given",
      year: "1994",
      given: [{ lot: { lot: "1994" } }],
    });
    expect(last("next year, 30 plants").year).toBeNull();
  });

  it("and names lots once", () => {
    expect(last("1994, 40 plants", "1994, 12 plants").lots.map((lot) => lot.name)).toEqual(["1994 b"]);
  });

  it("and mixes what was harvested with what was there", () => {
    const before = last("1990, 20 plants", "1994, mixed with the 1990 seed, 40 plants, kept 12");
    expect(before.from.map((one) => one.lot)).toEqual(["1990", "1990"]);
    const after = last("1990, 20 plants", "1994, 40 plants, kept 12, mixed with the 1990 seed");
    expect(after.lots.map((lot) => `${lot.kind} ${lot.name}`)).toEqual(["harvest 1994", "blend 1994 blend"]);
    expect(after.lots[1]?.parents.map((one) => one.lot)).toEqual(["1994", "1990"]);
  });

  it("and reads two digits by today's year", () => {
    expect(readNotebookLine("26, 20 plants", { earlier: [], today: "2026-03-01" }).proposal.year).toBe("2026");
    expect(readNotebookLine("27, 20 plants", { earlier: [], today: "2026-03-01" }).proposal.year).toBe("1927");
    expect(readNotebookLine("27, 20 plants").proposal.year).toBe("2027");
  });
});

describe("any text at all", () => {
  const pieces = ALL.flatMap(([words]) => words.split(/(?=[ ,])/));
  const jumbled = fc.array(fc.constantFrom(...pieces), { maxLength: 30 }).map((parts) => parts.join(""));
  const anyText = fc.oneof(fc.string(), fc.string({ unit: "binary" }), jumbled);

  it("is read without a fault; pieces lie inside it, in order, apart, and keep its words", () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const reading = readNotebookLine(text);
        expect(reading.words).toBe(text);
        const spans = [...reading.understood, ...reading.notUnderstood].sort((left, right) => left.from - right.from);
        let place = 0;
        for (const span of spans) {
          expect(span.from).toBeGreaterThanOrEqual(place);
          expect(span.to).toBeGreaterThan(span.from);
          expect(text.slice(span.from, span.to)).toBe(span.words);
          place = span.to;
        }
        expect(place).toBeLessThanOrEqual(text.length);
      }),
      { numRuns: 1500 },
    );
  });

  it("is read alike each time", () => {
    fc.assert(
      fc.property(fc.array(anyText, { maxLength: 4 }), (lines) => {
        expect(readNotebookLines(lines)).toEqual(readNotebookLines(lines));
      }),
      { numRuns: 150 },
    );
  });

  it("never yields a number that no word of it says", () => {
    fc.assert(
      fc.property(fc.stringMatching(/^[a-z ,.;]{0,60}$/), (text) => {
        fc.pre(
          !/\b(?:one|two|three|four|five|six|seven|eight|nine|ten|a|an|half|dozen|score|hundred|no|none|nothing|empty|last|quarter|third|couple)\b/.test(
            text,
          ),
        );
        const { plantsStanding, seedParents, seedsSown, harvested } = readNotebookLine(text).proposal;
        for (const count of [plantsStanding, seedParents, seedsSown, ...harvested])
          expect(count?.value ?? null).toBeNull();
      }),
    );
  });
});
