import { describe, expect, it } from "vitest";
import { lineFields } from "@/app/type-in/_lines/line-fields";
import { proposedLineage } from "@/app/type-in/_lines/proposed-lineage";
import { amountTyped, countTyped, shareTyped, upOfTyped } from "@/app/type-in/_lines/told-numbers";
import { type Fixes, readLines } from "@/app/type-in/_lines/typed-line";
import { notebook, today, typed } from "./typed-lines";

const fixed = (place: number, fixes: Fixes, words = notebook) => readLines(typed(words, { [place]: fixes }), today);
const shown = (lines: ReturnType<typeof readLines>, place: number) => {
  const line = lines[place];
  return Object.fromEntries(line ? lineFields(line).map((field) => [field.key, field.text]) : []);
};

describe("what a line says beside its words", () => {
  it("is each thing that was understood, with what is not said left open", () => {
    const fields = shown(readLines(typed(notebook), today), 0);
    expect(fields).toMatchObject({
      year: "1994",
      received: null,
      "from.0": "my aunt's jar",
      plantsStanding: "about 40",
      seedParents: "12",
      seedShares: null,
      harvested: null,
    });
  });

  it("keeps the words as typed, whatever is put right", () => {
    expect(fixed(0, { year: { text: "1995" }, plantsStanding: { text: "30" } })[0]?.words).toBe(notebook[0]);
  });
});

describe("a correction", () => {
  it("puts another number in place, exact or about, and leaves it out when dropped", () => {
    expect(shown(fixed(0, { plantsStanding: { text: "45" } }), 0).plantsStanding).toBe("45");
    expect(shown(fixed(0, { plantsStanding: { text: "about 45" } }), 0).plantsStanding).toBe("about 45");
    expect(shown(fixed(0, { plantsStanding: { dropped: true } }), 0).plantsStanding).toBeNull();
  });

  it("that cannot be read is said at its field, and nothing is changed", () => {
    const lines = fixed(0, {
      plantsStanding: { text: "forty plants" },
      harvested: { text: "300" },
      year: { text: "soon" },
    });
    expect(lines[0]?.faults.plantsStanding).toBe("“forty plants” is no count; write 40, about 40 or 30-40.");
    expect(lines[0]?.faults.harvested).toContain("350 g or 500 seeds");
    expect(lines[0]?.faults.year).toContain("is no year");
    expect(shown(lines, 0).plantsStanding).toBe("about 40");
  });

  it("of a year reaches the lines that lean on it", () => {
    const words = ["1994, 40 plants, kept from 12", "1996, last year's seed, 30 plants, kept from 9"];
    const asTyped = proposedLineage(readLines(typed(words), today));
    expect(asTyped.growOuts[1]?.parents[0]).toMatchObject({ lot: "1994", assumed: true });
    const right = proposedLineage(fixed(0, { year: { text: "1995" } }, words));
    expect(right.lots.map((lot) => lot.year)).toContain("1995");
    expect(right.growOuts[1]?.parents[0]).toMatchObject({ lot: "1995", assumed: false });
  });

  it("of the seed sown takes another lot, one that stands already, or says that nobody knows", () => {
    const other = proposedLineage(fixed(4, { "from.0": { text: "1994" } }));
    expect(other.growOuts.at(-1)?.parents[0]?.lot).toBe("1994");
    const standing = proposedLineage(fixed(4, { "from.0": { text: "lot:abc" } }));
    expect(standing.growOuts.at(-1)?.parents[0]?.lot).toBe("lot:abc");
    const unknown = proposedLineage(fixed(4, { "from.0": { text: "unknown" } }));
    const founder = unknown.lots.find((lot) => lot.name === unknown.growOuts.at(-1)?.parents[0]?.lot);
    expect([founder?.kind, founder?.assumed, founder?.year]).toEqual(["founder", true, null]);
  });

  it("of the first seed leaves out the lot that stood for it, once nothing comes from it", () => {
    const words = ["1994, 40 plants, kept from 12"];
    expect(proposedLineage(readLines(typed(words), today)).lots.map((lot) => lot.kind)).toEqual(["founder", "harvest"]);
    const standing = proposedLineage(fixed(0, { "from.0": { text: "lot:abc" } }, words));
    expect(standing.lots.map((lot) => lot.kind)).toEqual(["harvest"]);
  });

  it("says that no seed was kept, or of which lot a test was", () => {
    const none = proposedLineage(fixed(0, { seedKept: { text: "no" } }));
    expect(none.lots.some((lot) => lot.year === "1994")).toBe(false);
    const test = proposedLineage(fixed(3, { "test.0": { text: "17/20" }, "testLot.0": { text: "1994" } }));
    expect([test.tests[0]?.lot, test.tests[0]?.up?.value, test.tests[0]?.of?.value]).toEqual(["1994", 17, 20]);
  });
});

describe("numbers typed in place of others", () => {
  it("are counts, amounts with their unit, shares and tests, or nothing", () => {
    expect([countTyped("30-40")?.low, countTyped("over 40")?.low, countTyped("12 hens")]).toEqual([30, 40, null]);
    expect([amountTyped("2 kg")?.grams?.value, amountTyped("500 seeds")?.unit, amountTyped("12")]).toEqual([
      2000,
      "seeds",
      null,
    ]);
    expect([shareTyped("1/4"), shareTyped("30 %"), shareTyped("0,5"), shareTyped("2"), shareTyped("half")]).toEqual([
      0.25,
      0.3,
      0.5,
      null,
      null,
    ]);
    expect([upOfTyped("18 of 20")?.up.value, upOfTyped("18/20")?.of.value, upOfTyped("18")]).toEqual([18, 20, null]);
  });
});
