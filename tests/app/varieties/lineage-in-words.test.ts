import { describe, expect, it } from "vitest";
import { unitsOf } from "@/app/lots/_words/units-of";
import { cardsOf } from "@/app/varieties/[id]/lineage/_words/cards";
import { headOf } from "@/app/varieties/[id]/lineage/_words/head";
import { treeOf } from "@/app/varieties/[id]/lineage/_words/tree";
import { orderTree } from "@/components/stem-chart";
import type { LotOfLineage } from "@/lib/registry/lineage/lineage-lots";
import type { LineageRead } from "@/lib/registry/lineage/read-lineage";
import { defaultSettings } from "@/lib/schemas/settings";

const lot = (id: string, more: Partial<LotOfLineage> = {}): LotOfLineage => ({
  ...{ id, number: id, kind: "harvest", varietyId: "v", variety: "Mere Flint", strain: null, holderId: null },
  ...{ at: { first: 2000, last: 2001 }, on: "2000", onWords: null, parents: [], growOutId: null, growOut: null },
  ...{ effectiveSize: null, kept: null, standing: "counted", foreignAncestry: null, generations: null },
  ...{ foreignPollen: null, gramsOnHand: null, living: null, status: null, outcome: null },
  ...more,
});

const read = (lots: LotOfLineage[]): LineageRead => ({
  variety: {
    ...{ id: "v", name: "Mere Flint", seedCoat: null, cropId: "c", cropKey: "maize-field", crop: "Maize" },
    ...{ matingSystem: "outcrossing", clonal: false },
  },
  lots,
  claims: [],
  stewards: [],
});

describe("a lot of another variety that was crossed in", () => {
  const crossed = read([
    lot("M 1", { kind: "founder" }),
    lot("S 7", { varietyId: "s", variety: "Stray Dent", parents: [{ id: "S 6", share: 1 }] }),
    lot("M 2", {
      parents: [
        { id: "M 1", share: 0.5 },
        { id: "S 7", share: 0.5 },
      ],
    }),
  ]);

  it("is drawn without its own descent, and that is no gap in the records", () => {
    expect(orderTree(treeOf(crossed)).faults).toEqual([]);
    expect(cardsOf(crossed, unitsOf(defaultSettings))["S 7"]?.kind).toContain("a lot that is not drawn here");
  });
});

describe("the head of a lineage", () => {
  it("tells a span where the records allow several figures, and the narrowest size that was counted", () => {
    const { figure, sentence } = headOf(
      read([
        lot("M 1", { kind: "founder", kept: { low: 1, high: 1 } }),
        lot("M 2", { kept: { low: 0.6, high: 0.9 }, living: true, effectiveSize: { low: 2, high: null } }),
        lot("M 3", { kept: { low: 0.5, high: 0.5 }, living: true, effectiveSize: { low: 20, high: 20 } }),
      ]),
    );
    expect(figure).toBe("60–90\u00a0%");
    expect(sentence).toContain("M 2");
    expect(sentence).toContain("an effective size of 20, at M 3");
  });
});
