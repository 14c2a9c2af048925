import { expect, it, vi } from "vitest";
import { cautiousKinship } from "@/lib/registry/figures/cautious-kinship";
import type { FigureRecords, GrowOutRecord, KinshipRecord, LotRecord } from "@/lib/registry/figures/records";
import { pageCalculations } from "@/lib/worker/long-calculations";

const crosser = { matingSystem: "outcrossing", selfIncompatible: "no", outcrossingPctMin: 90, outcrossingPctMax: 100 };
const selfer = { matingSystem: "selfing", selfIncompatible: "no", outcrossingPctMin: 0, outcrossingPctMax: 0 };
const varieties = [
  { id: "crosser", name: "Crosser", profile: crosser, clonal: false },
  { id: "selfer", name: "Selfer", profile: selfer, clonal: false },
];

const lot = (id: string, rest: Partial<LotRecord> = {}): LotRecord => ({
  ...{ id, number: id, varietyId: "crosser", holder: null, kind: "founder", growOutId: null },
  ...{ parents: [], inbreeding: 0, thousandSeedGrams: null },
  ...rest,
});

/** Ten plants of one lot, all alive to flowering, seed of all alike. */
const growOut = (id: string, from: string): GrowOutRecord => ({
  ...{ id, name: `grown ${id}`, varietyId: "crosser", parents: [{ id: from, share: 1 }] },
  ...{ plantsStanding: 10, malesStanding: null, roguedBeforePollen: 0, seedParents: 10 },
  ...{ seedShares: "equal", selfingRate: 0, foreignPollen: 0 },
});

const records = (kinships: KinshipRecord[]): FigureRecords => ({
  varieties,
  lots: [
    lot("A"),
    lot("B"),
    lot("X", { kind: "harvest", growOutId: "G" }),
    lot("Y", { kind: "harvest", growOutId: "H" }),
  ],
  growOuts: [growOut("G", "A"), growOut("H", "B")],
  kinships,
});

it("lots of founders who share a tenth share a tenth, and hold more within themselves (by hand)", async () => {
  const told = { firstId: "A", secondId: "B", kind: "coancestry", coancestry: 0.1 } as KinshipRecord;
  const kin = await cautiousKinship(records([told]), ["X", "Y", "A"]);
  // θ = 0.1 + (1/10)·(½ − 0.1) = 0.14; nothing arises between two lines
  expect(kin?.[0]?.[0]).toBeCloseTo(0.14, 12);
  expect(kin?.[0]?.[1]).toBeCloseTo(0.1, 12);
  expect(kin?.[1]?.[0]).toBeCloseTo(0.1, 12);
  expect(kin?.[2]?.[2]).toBeCloseTo(0.1, 12);
});

it("two pure lines of which nobody wrote how they are related may be one: as near as each is to itself", async () => {
  const line = (id: string) => lot(id, { varietyId: "selfer", inbreeding: 1, founderLines: "one" });
  const kin = await cautiousKinship({ varieties, lots: [line("A"), line("B")], growOuts: [], kinships: [] }, [
    "A",
    "B",
  ]);
  expect(kin?.flat().map((theta) => Number(theta.toFixed(12)))).toEqual([1, 1, 1, 1]);
});

it("where no record of a founder moves it there is nothing to tell apart", async () => {
  expect(await cautiousKinship(records([]), ["X", "Y"])).toBeNull();
});

it("of many lots the thread answers the same", async () => {
  const told = { firstId: "A", secondId: "B", kind: "coancestry", coancestry: 0.1 } as KinshipRecord;
  const ids = Array.from({ length: 30 }, (_, i) => `S${i}`);
  const { lots, ...rest } = records([told]);
  const splits = ids.map((id, i) => lot(id, { kind: "split", parents: [{ id: i % 2 ? "X" : "Y", share: 1 }] }));
  const ask = vi.spyOn(pageCalculations(), "ask");
  const kin = await cautiousKinship({ lots: [...lots, ...splits], ...rest }, ids);
  expect(ask).toHaveBeenCalledOnce();
  pageCalculations().close();
  // splits of one lot are as near as its plants to each other, of both as the founders
  expect(kin?.[1]?.[3]).toBeCloseTo(0.14, 12);
  expect(kin?.[1]?.[2]).toBeCloseTo(0.1, 12);
});
