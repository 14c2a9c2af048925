import { describe, expect, it } from "vitest";
import { cropList } from "@/lib/science/crops/crop-profile";
import { scenarioFolder } from "@/seed-scenario/scenario-folder";
import { projectFiles, textOf } from "../architecture/source-files";
import { daySpan, rowOf, rowsOf } from "./circle-folder";

describe("the demonstration circle", () => {
  it("has the people, varieties, lots and years that were promised", () => {
    expect(rowsOf("stewards.csv").length).toBeGreaterThanOrEqual(8);
    expect(rowsOf("varieties.csv").length).toBeGreaterThanOrEqual(14);
    expect(rowsOf("lots.csv").length).toBeGreaterThanOrEqual(350);
    const days = rowsOf("ledger.csv").flatMap(({ date = "" }) => daySpan(date));
    days.sort();
    expect(days[0]).toBe("1996-01-01");
    expect(days.at(-1)?.slice(0, 7)).toBe("2026-11");
  });

  it("keeps varieties of every mating system, of one, two and many years", () => {
    const crops = cropList();
    const kept = rowsOf("varieties.csv").map(({ crop }) => crops.find((each) => each.key === crop));
    expect(kept).not.toContain(undefined);
    const said = (field: "matingSystem" | "lifeCycle" | "pollinationVector") =>
      new Set(kept.map((crop) => crop?.[field]));
    expect([...said("matingSystem")].sort()).toEqual(["clonal", "dioecious", "mixed", "outcrossing", "selfing"]);
    expect([...said("lifeCycle")].sort()).toEqual(["annual", "biennial", "perennial"]);
    expect([...said("pollinationVector")]).toEqual(expect.arrayContaining(["wind", "insect", "self"]));
    expect(kept.some((crop) => crop?.matingSystem === "outcrossing" && crop.selfIncompatible?.startsWith("yes"))).toBe(
      true,
    );
  });

  it("has lots of each kind, and varieties with more than one founder", () => {
    const kinds = new Set(rowsOf("lots.csv").map(({ kind }) => kind));
    expect([...kinds].sort()).toEqual(["blend", "founder", "harvest", "split"]);
    expect(
      rowsOf("lots.csv").filter(({ kind, variety }) => kind === "founder" && variety === "Quillet Grey"),
    ).toHaveLength(3);
  });

  it("knows some dates only about, between, or by the decade", () => {
    const years = rowsOf("lots.csv").map(({ year = "" }) => year);
    for (const kind of [/~$/, /\?$/, /^\[\d{4}\.\.\d{4}\]$/, /^\d{3}X$/, /^\d{4}\/\d{4}$/, /^$/])
      expect(years.filter((year) => kind.test(year)).length, String(kind)).toBeGreaterThanOrEqual(1);
  });

  it("tells of failed grow-outs, of unknown founders, of crosses with how each was found", () => {
    const failed = rowsOf("grow_outs.csv").filter(({ outcome }) => outcome !== "");
    expect(failed.length).toBeGreaterThanOrEqual(4);
    const lots = rowsOf("lots.csv");
    for (const { grow_out } of failed) expect(lots.filter(({ from }) => from === grow_out)).toEqual([]);
    expect(lots.filter(({ notes }) => notes?.includes("unknown before here")).length).toBeGreaterThanOrEqual(6);
    const crossed = rowsOf("warnings.csv").filter(({ kind }) => kind === "suspected cross");
    expect(crossed.length).toBe(3);
    for (const { lot = "" } of crossed) {
      const growOut = rowOf("grow_outs.csv", "grow_out", rowOf("lots.csv", "lot", lot).from ?? "");
      expect(Number(growOut.foreign_pollen)).toBeGreaterThan(0.02);
    }
  });

  it("has a sole copy, a greedy mother, a bottleneck and a strain that came home", () => {
    const sole = rowsOf("lots.csv").filter(({ variety }) => variety === "Vesper Tassel");
    expect(new Set(sole.map(({ holder }) => holder))).toEqual(new Set(["Hesk Dunnaby"]));
    const seed = rowsOf("plants.csv").filter(
      (plant) => plant.grow_out === "Anvil 2014 weir garden" && plant.kept === "yes",
    );
    const grams = seed.map((plant) => Number(plant.seed_grams)).sort((a, b) => b - a);
    const all = grams.reduce((sum, each) => sum + each, 0);
    expect(grams.slice(0, 3).reduce((sum, each) => sum + each, 0) / all).toBeGreaterThan(0.6);
    expect(rowOf("grow_outs.csv", "grow_out", "Night 2002 mill field").seed_parents).toBe("9");
    expect(rowsOf("strains.csv").map(({ name }) => name)).toContain("Averil keeping");
    expect(
      rowsOf("transfers.csv").filter(
        ({ kind, from_steward }) => kind === "return" && from_steward === "Ottoline Frayle",
      ),
    ).toHaveLength(1);
  });

  it("ends with the last season in and some grow-outs of 2026 still standing", () => {
    const harvested = new Set(rowsOf("lots.csv").map(({ from }) => from));
    const ofLastYear = rowsOf("grow_outs.csv").filter(({ sown }) => sown?.startsWith("2026"));
    expect(ofLastYear.filter(({ grow_out }) => harvested.has(grow_out ?? "")).length).toBeGreaterThanOrEqual(5);
    expect(ofLastYear.filter(({ grow_out }) => !harvested.has(grow_out ?? "")).length).toBeGreaterThanOrEqual(3);
  });

  it("is the same on every call, to the byte", () => {
    expect([...scenarioFolder()]).toEqual([...scenarioFolder()]);
  });

  it("is drawn without a clock and without chance of the machine", () => {
    const sources = projectFiles(/^seed-scenario\/.*\.ts$/);
    expect(sources.length).toBeGreaterThan(20);
    expect(
      sources.filter((file) => /Math\.random|\bDate\b|performance\.|randomBytes|randomUUID/.test(textOf(file))),
    ).toEqual([]);
  });

  it("takes no name from the reference folders", () => {
    const names = (file: string) =>
      textOf(file)
        .split(/\r?\n/)
        .slice(1)
        .flatMap((line) => line.split(",").slice(0, 2));
    const theirs = new Set(
      ["stewards", "varieties"]
        .flatMap((file) => names(`tests/reference/notebook/${file}.csv`))
        .filter((name) => name !== ""),
    );
    const ours = [...rowsOf("stewards.csv"), ...rowsOf("varieties.csv")].flatMap((row) => [
      row.steward,
      row.variety,
      row.place,
    ]);
    expect(theirs.size).toBeGreaterThan(10);
    expect(ours.filter((name) => name !== undefined && theirs.has(name))).toEqual([]);
  });
});
