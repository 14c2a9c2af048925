import { expect, it } from "vitest";
import { assumedOfSpan, lineageSpanAssumed } from "@/lib/science/lineage/span-assumed";

const codes = (lot: Parameters<typeof assumedOfSpan>[0]) => assumedOfSpan(lot).map(({ code }) => code);
const counted = { pollenParents: 20, seedParents: 10, seedShares: "equal" as const, pollenShares: "equal" as const };
const sown = { id: "A", kind: "grow-out" as const, parents: [{ id: "F", share: 1 }], selfingRate: 0 };

it("says that foreign pollen was not assessed, and nothing of what was stated", () => {
  expect(codes({ ...sown, ...counted })).toEqual(["foreign-pollen-not-assessed"]);
  expect(codes({ ...sown, ...counted, foreignPollen: 0 })).toEqual([]);
});

it("says where shares of parents or of seed lie between ends", () => {
  const parents = [{ id: "F" }, { id: "G" }];
  expect(codes({ ...sown, ...counted, foreignPollen: 0, parents })).toEqual(["parent-shares-between"]);
  expect(codes({ ...sown, ...counted, foreignPollen: 0, seedShares: "unknown" })).toEqual(["seed-shares-between"]);
});

it("says where the measure begins anew", () => {
  expect(codes(sown)).toEqual(["measured-from-here"]);
});

it("names each once, for all lots together", () => {
  const lots = [sown, { ...sown, id: "B" }];
  expect(lineageSpanAssumed(lots).map(({ code }) => code)).toEqual(["measured-from-here"]);
});
