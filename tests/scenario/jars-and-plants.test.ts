import { describe, expect, it } from "vitest";
import { cropList } from "@/lib/science/crops/crop-profile";
import { type CsvRow, daySpan, numberIn, rowsOf } from "./circle-folder";

const bringing = new Set(["received", "harvested", "blended-in"]);

/** Grams after each line of a lot, in whole hundredths, by the rule that the README of the folder states. */
function steps(lines: readonly CsvRow[]): number[] {
  const placed = lines.map((line, place) => {
    const [first, last] = daySpan(line.date ?? "");
    return { line, place, day: bringing.has(line.kind ?? "") ? first : last };
  });
  placed.sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : a.place - b.place));
  let held = 0;
  return placed.map(({ line }) => {
    const grams = Math.round(Number(line.grams) * 100);
    if (line.kind === "weighed") held = grams;
    else held += bringing.has(line.kind ?? "") ? grams : -grams;
    return held;
  });
}

const lots = new Map(rowsOf("lots.csv").map((row) => [row.lot ?? "", row]));
const varieties = new Map(rowsOf("varieties.csv").map(({ variety, crop }) => [variety, crop]));
const crops = new Map(cropList().map((crop) => [crop.key, crop]));
const cropOf = (variety: string | undefined) => crops.get(varieties.get(variety) ?? "");

const ledger = new Map<string, CsvRow[]>();
for (const line of rowsOf("ledger.csv")) ledger.set(line.lot ?? "", [...(ledger.get(line.lot ?? "") ?? []), line]);

// One lot was written down twice: the second record has the jar's ledger in the first.
const secondRecords = new Set(rowsOf("lot_details.csv").flatMap(({ lot, same_as }) => (same_as === "" ? [] : [lot])));

describe("a jar of the demonstration circle", () => {
  it("never gives more than it holds", () => {
    const inDebt = [...ledger].filter(([, lines]) => steps(lines).some((held) => held < 0)).map(([lot]) => lot);
    expect(inDebt).toEqual([]);
    expect(ledger.size).toBeGreaterThan(400);
  });

  it("begins with what brought the seed", () => {
    const beginnings: Readonly<Record<string, string>> = {
      founder: "received",
      split: "received",
      harvest: "harvested",
      blend: "blended-in",
    };
    for (const [lot, lines] of ledger) expect(lines[0]?.kind, lot).toBe(beginnings[lots.get(lot)?.kind ?? ""]);
    // One jar was left on a counter, and nobody has weighed it.
    expect([...lots.keys()].filter((lot) => !ledger.has(lot) && !secondRecords.has(lot))).toHaveLength(1);
  });

  it("gives to a split what the split receives, and to a blend what the blend takes in", () => {
    for (const [lot, row] of lots) {
      if (row.kind === "split") {
        const [received] = ledger.get(lot) ?? [];
        const given = ledger.get(row.from ?? "")?.filter(({ notes }) => notes === `as ${lot}`) ?? [];
        expect(
          given.map(({ grams }) => grams),
          lot,
        ).toEqual([received?.grams]);
      }
      if (row.kind !== "blend") continue;
      for (const { other = "", grams } of (ledger.get(lot) ?? []).filter(({ kind }) => kind === "blended-in")) {
        const out = ledger.get(other)?.filter((line) => line.kind === "blended-out" && line.other === lot) ?? [];
        expect(
          out.map((line) => line.grams),
          lot,
        ).toEqual([grams]);
      }
    }
  });

  it("is sown in the grow-out that names it, and tested with the seeds that the test says", () => {
    const sown = new Set(
      rowsOf("ledger.csv").flatMap(({ kind, lot, other }) => (kind === "sown" ? [`${lot} ${other}`] : [])),
    );
    for (const { grow_out, parents = "" } of rowsOf("grow_outs.csv"))
      for (const part of parents.split(";"))
        expect(sown.has(`${part.replace(/:[\d.]+$/, "")} ${grow_out}`), grow_out).toBe(true);
    const tests = new Set(rowsOf("tests.csv").flatMap(({ test, lot }) => (secondRecords.has(lot) ? [] : [test])));
    expect(rowsOf("ledger.csv").filter(({ kind }) => kind === "tested")).toHaveLength(tests.size);
  });

  it("holds seed of a weight that its crop can have", () => {
    for (const [lot, row] of lots) {
      const crop = cropOf(row.variety);
      const weight = numberIn(row, "thousand_seed_grams");
      if (weight === null || !crop?.seedsPerGramMin || !crop.seedsPerGramMax) continue;
      expect(weight, lot).toBeGreaterThan((1000 / crop.seedsPerGramMax) * 0.8);
      expect(weight, lot).toBeLessThan((1000 / crop.seedsPerGramMin) * 1.2);
    }
  });

  it("has in its containers what its ledger says", () => {
    const amounts = new Map<string, number>();
    for (const { lot = "", amount } of rowsOf("containers.csv"))
      amounts.set(lot, (amounts.get(lot) ?? 0) + Math.round(Number(amount) * 100));
    for (const [lot, lines] of ledger) expect(amounts.get(lot) ?? 0, lot).toBe(steps(lines).at(-1));
  });
});

describe("a germination test of the demonstration circle", () => {
  it("counts no more seeds than were sown, and all of them at the end", () => {
    const replicates = new Map<string, CsvRow[]>();
    for (const line of rowsOf("tests.csv")) {
      const key = `${line.test} / ${line.replicate}`;
      replicates.set(key, [...(replicates.get(key) ?? []), line]);
    }
    for (const [key, lines] of replicates) {
      const counted = lines.reduce(
        (sum, line) =>
          sum +
          ["normal", "abnormal", "hard", "fresh", "dead"].reduce(
            (each, column) => each + (numberIn(line, column) ?? 0),
            0,
          ),
        0,
      );
      const sown = Number(lines[0]?.sown);
      expect(counted, key).toBeLessThanOrEqual(sown);
      if (lines.some(({ dead }) => dead !== "")) expect(counted, key).toBe(sown);
    }
  });

  it("finds less and less alive as the years go by", () => {
    const share = new Map<number, { normal: number; sown: number }>();
    const sown = new Map<string, number>();
    for (const line of rowsOf("tests.csv")) {
      const lot = lots.get(line.lot ?? "");
      if (!lot || lot.year === "" || lot.holder === "Cauldrith Hill Store") continue;
      const age = Number(line.date?.slice(0, 4)) - Number(daySpan(lot.year ?? "")[1].slice(0, 4));
      const group = age <= 1 ? 1 : age <= 4 ? 4 : 8;
      const sum = share.get(group) ?? { normal: 0, sown: 0 };
      const key = `${line.test} / ${line.replicate}`;
      share.set(group, {
        normal: sum.normal + Number(line.normal),
        sown: sum.sown + (sown.has(key) ? 0 : Number(line.sown)),
      });
      sown.set(key, Number(line.sown));
    }
    const [young, middle, old] = [1, 4, 8].map(
      (group) => (share.get(group)?.normal ?? 0) / (share.get(group)?.sown ?? 1),
    );
    expect(young).toBeGreaterThan(0.85);
    expect(middle).toBeLessThan(young ?? 0);
    expect(old).toBeLessThan((middle ?? 0) - 0.15);
  });
});

describe("the plants of a grow-out", () => {
  const growOuts = rowsOf("grow_outs.csv");

  it("are no more than the seeds sown, the rogues no more than the plants, the seed parents no more than could be", () => {
    for (const growOut of growOuts) {
      const [seeds, standing, males] = ["seeds_sown", "plants_standing", "males_standing"].map((column) =>
        numberIn(growOut, column),
      );
      const [before, after, mothers] = ["rogued_before_pollen", "rogued_after_pollen", "seed_parents"].map(
        (column) => numberIn(growOut, column) ?? 0,
      );
      const name = growOut.grow_out;
      if (standing === null || standing === undefined) continue;
      expect(standing, name).toBeLessThanOrEqual(seeds ?? Number.POSITIVE_INFINITY);
      expect((before ?? 0) + (after ?? 0), name).toBeLessThanOrEqual(standing);
      expect(mothers, name).toBeLessThanOrEqual(standing - (before ?? 0) - (males ?? 0));
    }
  });

  it("mostly reach the crop's floor, and sometimes not", () => {
    const gaveSeed = new Set(rowsOf("lots.csv").map(({ from }) => from));
    const counted = growOuts.filter(
      ({ grow_out, plants_standing }) => gaveSeed.has(grow_out) && plants_standing !== "",
    );
    const below = counted.filter((growOut) => {
      const left = (numberIn(growOut, "plants_standing") ?? 0) - (numberIn(growOut, "rogued_before_pollen") ?? 0);
      return left < (cropOf(growOut.variety)?.plantsMin ?? 0);
    });
    expect(below.length).toBeGreaterThanOrEqual(3);
    expect(below.length / counted.length).toBeLessThan(0.1);
  });

  it("were pulled in passes that come to the same sums, of those that were left", () => {
    const passes = rowsOf("rogue_passes.csv");
    expect(passes.length).toBeGreaterThan(300);
    for (const { grow_out, rogued_before_pollen, rogued_after_pollen } of growOuts) {
      const own = passes.filter((pass) => pass.grow_out === grow_out);
      const sum = (timing: string) =>
        own.filter((pass) => pass.timing === timing).reduce((total, { pulled }) => total + Number(pulled), 0);
      expect(sum("before"), grow_out).toBe(Number(rogued_before_pollen));
      expect(sum("after"), grow_out).toBe(Number(rogued_after_pollen));
      for (const { looked, pulled, left } of own) expect(Number(looked) - Number(pulled), grow_out).toBe(Number(left));
    }
  });

  it("fall from stage to stage", () => {
    const stages = ["sown", "up", "thinned", "standing", "flowering"];
    for (const { grow_out } of growOuts) {
      const own = rowsOf("stage_counts.csv").filter((count) => count.grow_out === grow_out);
      const inOrder = stages.flatMap((stage) =>
        own.filter((count) => count.stage === stage).map(({ plants }) => Number(plants)),
      );
      expect(inOrder, grow_out).toEqual([...inOrder].sort((a, b) => b - a));
    }
  });
});
