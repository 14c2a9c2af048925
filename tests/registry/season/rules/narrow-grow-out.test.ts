import { describe, expect, it } from "vitest";
import { narrowGrowOut } from "@/lib/registry/season/rules/narrow-grow-out";
import { crop, madeLot, madeRecords, madeVariety } from "../made-records";

const growOut = (id: string, year: string | null) => ({
  id,
  name: id,
  varietyId: "v1",
  sown: year,
  sownFirst: year && `${year}-01-01`,
  sownLast: year && `${year}-12-31`,
  stewardId: null,
  purpose: null,
  plantsStanding: null,
  seedParents: null,
  outcome: null,
});
const from = (growOutId: string, effectiveSize: number | null) =>
  madeLot({ id: `of ${growOutId}`, growOutId, effectiveSize, kind: "harvest" });

describe("a last grow-out that was a bottleneck", () => {
  it("waits below the crop's floor of plants and not at it", () => {
    const at = (size: number) =>
      narrowGrowOut(madeRecords({ growOuts: [growOut("G1", "2020")], lots: [from("G1", size)] }));
    expect(at(40)).toEqual([]);
    expect(at(39.9)[0]?.facts).toMatchObject({ effectiveSize: 39.9, floor: 40 });
  });

  it("is the last one that gave seed, whatever came before or failed after", () => {
    const growOuts = [growOut("G1", "2020"), growOut("G2", "2024"), growOut("G3", "2025")];
    const lots = [from("G1", 10), from("G2", 80)];
    expect(narrowGrowOut(madeRecords({ growOuts, lots }))).toEqual([]);
    expect(narrowGrowOut(madeRecords({ growOuts, lots: [from("G1", 80), from("G2", 10)] }))).toHaveLength(1);
  });

  it("is not claimed where the size or the floor is unknown, nor of a clonal crop", () => {
    const growOuts = [growOut("G1", "2020")];
    const varieties = (patch: object) => new Map([["v1", madeVariety({ crop: { ...crop, ...patch } })]]);
    expect(narrowGrowOut(madeRecords({ growOuts, lots: [from("G1", null)] }))).toEqual([]);
    const lots = [from("G1", 5)];
    expect(narrowGrowOut(madeRecords({ growOuts, lots, varieties: varieties({ plantsMin: null }) }))).toEqual([]);
    expect(narrowGrowOut(madeRecords({ growOuts, lots, varieties: varieties({ clonal: true }) }))).toEqual([]);
  });

  it("takes a grow-out without a date only where none has one", () => {
    const growOuts = [growOut("G1", "2020"), growOut("G2", null)];
    expect(narrowGrowOut(madeRecords({ growOuts, lots: [from("G1", 80), from("G2", 5)] }))).toEqual([]);
  });
});
