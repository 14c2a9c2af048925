import { expect, it } from "vitest";
import { cautiousKinship } from "@/lib/registry/figures/cautious-kinship";
import { groundOfLots } from "@/lib/registry/figures/ground-of-lots";
import type { FigureRecords, GrowOutRecord, LotRecord } from "@/lib/registry/figures/records";
import { recordsAround } from "@/lib/registry/figures/records-around";

const crosser = { matingSystem: "outcrossing", selfIncompatible: "no", outcrossingPctMin: 90, outcrossingPctMax: 100 };

const lot = (id: string, more: Partial<LotRecord> = {}): LotRecord => ({
  ...{ id, number: `Around ${id}`, varietyId: "v", holder: null, kind: "founder", growOutId: null, parents: [] },
  ...{ inbreeding: 0, founderLines: "many", thousandSeedGrams: null },
  ...more,
});
const harvest = (id: string, growOutId: string) => lot(id, { kind: "harvest", growOutId, inbreeding: null });
const grown = (id: string, ...from: string[]): GrowOutRecord => ({
  ...{ id, name: `grown ${id}`, varietyId: "v", plantsStanding: 60, malesStanding: null, roguedBeforePollen: 0 },
  ...{ seedParents: 20, seedShares: "equal", selfingRate: 0, foreignPollen: 0 },
  parents: from.map((parent) => ({ id: parent, share: 1 / from.length })),
});

/** A and B gave C and, by another harvest, D; E is by itself and told to be near B; F and G have nothing to do with them. */
const records: FigureRecords = {
  varieties: [{ id: "v", name: "Around", profile: crosser, clonal: false }],
  lots: [
    lot("F"),
    lot("A"),
    lot("B"),
    harvest("G", "g2"),
    harvest("C", "g1"),
    harvest("D", "g1"),
    lot("E"),
    lot("S", { kind: "split", parents: [{ id: "C", share: 1 }], inbreeding: null }),
  ],
  growOuts: [grown("g2", "F"), grown("g1", "A", "B")],
  kinships: [{ firstId: "B", secondId: "E", kind: "coancestry", coancestry: 0.2 }],
};

it("of a lot stands what it descends from, and whom its founders are told to be near, in the order of the records", () => {
  const around = recordsAround(records, ["S"]);
  expect(around.lots.map(({ id }) => id)).toEqual(["A", "B", "C", "D", "E", "S"]);
  expect(around.growOuts.map(({ id }) => id)).toEqual(["g1"]);
  expect(around.kinships).toEqual(records.kinships);
  expect(recordsAround(records, ["G"])).toMatchObject({ kinships: [], growOuts: [{ id: "g2" }] });
});

it("how near lots are follows from those alone", async () => {
  const few = recordsAround(records, ["S", "E"]);
  expect(groundOfLots(few, ["S", "E"])).toEqual(groundOfLots(records, ["S", "E"]));
  const cautious = await cautiousKinship(records, ["S", "E"]);
  expect(await cautiousKinship(few, ["S", "E"])).toEqual(cautious);
  // B is half of S's seed and shares 0.2 with E
  expect(cautious?.[0]?.[1]).toBeCloseTo(0.1, 12);
});
