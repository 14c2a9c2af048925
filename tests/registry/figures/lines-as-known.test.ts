import { expect, it } from "vitest";
import { lotNode } from "@/lib/registry/figures/lineage-nodes";
import { lineageOfRecords } from "@/lib/registry/figures/lineage-of-records";
import { linesAsKnown } from "@/lib/registry/figures/lines-as-known";
import type { FigureRecords, GrowOutRecord, LotRecord } from "@/lib/registry/figures/records";
import { lineageSpan } from "@/lib/science/lineage/lineage-span";

const profile = { matingSystem: "outcrossing", selfIncompatible: "no", outcrossingPctMin: 90, outcrossingPctMax: 100 };
const lot = (id: string, rest: Partial<LotRecord> = {}): LotRecord => ({
  ...{ id, number: id, varietyId: "v", holder: null, kind: "founder", growOutId: null },
  ...{ parents: [], inbreeding: 0, thousandSeedGrams: null },
  ...rest,
});
const grown = (id: string, from: string, rest: Partial<GrowOutRecord> = {}): GrowOutRecord => ({
  ...{ id, name: `grown ${id}`, varietyId: "v", parents: [{ id: from, share: 1 }] },
  ...{ plantsStanding: 10, malesStanding: null, roguedBeforePollen: 0, seedParents: 4 },
  ...{ seedShares: "equal", selfingRate: 0, foreignPollen: 0 },
  ...rest,
});
const records: FigureRecords = {
  varieties: [{ id: "v", name: "Rain Flint", profile, clonal: false }],
  lots: [
    lot("A"),
    lot("B", { kind: "harvest", growOutId: "G" }),
    lot("C", { kind: "harvest", growOutId: "H" }),
    lot("X"),
  ],
  growOuts: [grown("G", "A", { plantsStanding: null, mostStanding: 40 }), grown("H", "B")],
  kinships: [],
};

it("the lines of lots have in them what their figures’ spans were worked out from, and nothing besides", () => {
  const known = linesAsKnown(records, ["C"]);
  expect(known.lots.map(({ id }) => id)).not.toContain(lotNode("X"));
  const outcome = lineageOfRecords(records);
  const spans = lineageSpan(known);
  if (!outcome.ok || !spans.ok) throw new Error("neither is refused");
  const of = (id: string) => spans.value.lots.find((each) => each.id === lotNode(id))?.diversityRetained;
  expect(of("C")).toEqual(outcome.value.spanOf("C")?.diversityRetained);
  // of 4 of 4 plants at the worst, of 4 of 40 at the best, by hand: θ 1/8, and 0.08125/2
  expect(of("B")?.low).toBeCloseTo(0.875, 12);
  expect(of("B")?.high).toBeCloseTo(1 - 0.040625, 12);
});
