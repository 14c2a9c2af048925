import { expect, it } from "vitest";
import { plantsToChoose } from "@/lib/registry/season/rules/plants-to-choose";
import { madeRecords } from "../made-records";

const growOut = (sown: string | null) => ({
  ...{ id: "G1", name: "Mill 2025", varietyId: "v1", sown, sownFirst: sown, sownLast: sown },
  ...{ stewardId: null, purpose: null, plantsStanding: null, seedParents: null, outcome: null },
});
const of = (scored: number, kept: number, sown: string | null = "2025-05-10") =>
  plantsToChoose(madeRecords({ growOuts: [growOut(sown)], scoredPlants: [{ growOutId: "G1", scored, kept }] }));

it("scored plants of which none is marked keep wait to be chosen; one alone, chosen ones and long past ones do not", () => {
  expect(of(12, 0)).toMatchObject([{ place: "field", varietyId: "v1", facts: { scored: 12 } }]);
  expect(of(12, 0, null)).toHaveLength(1);
  expect([of(1, 0), of(12, 3), of(12, 0, "2024-03-09")]).toEqual([[], [], []]);
  expect(plantsToChoose(madeRecords({ growOuts: [growOut(null)] }))).toEqual([]);
});
