import { expect, it } from "vitest";
import { coancestryOfPairs } from "@/lib/science/lineage/coancestry-of-pair";
import { followLots } from "@/lib/science/lineage/follow-lots";
import type { LineageInput } from "@/lib/science/lineage/lots";
import { lotsInUse } from "@/lib/science/lineage/lots-in-use";
import { pedigree } from "@/lib/science/lineage/pedigree";
import { RankQueue } from "@/lib/science/lineage/rank-queue";
import { answered, referenceCases } from "../agreement";

it("a pair has one coancestry, whichever stands first, and each may be asked again", () => {
  for (const { input } of referenceCases<LineageInput>("lineage").slice(0, 20)) {
    const built = answered(pedigree(input.lots));
    const between = coancestryOfPairs(built, followLots(built));
    const last = built.lots.length - 1;
    expect(between(last, 0)).toBe(between(0, last));
    expect(between(last, 0)).toBe(between(last, 0));
  }
});

it("of two lines that never meet nothing is in common", () => {
  const line = (id: string) => [
    { id, kind: "founder" as const },
    { id: `${id}1`, kind: "grow-out" as const, parents: [{ id, share: 1 }], pollenParents: 5, seedParents: 5 },
  ];
  const built = answered(pedigree([...line("A"), ...line("B")]));
  const between = coancestryOfPairs(built, followLots(built));
  expect(between(built.rankOf.get("A1") as number, built.rankOf.get("B1") as number)).toBe(0);
});

it("a line of single parents never needs more than two lots at hand", () => {
  const lots = Array.from({ length: 50 }, (_, i) =>
    i === 0
      ? { id: "0", kind: "founder" as const }
      : { id: `${i}`, kind: "split" as const, parents: [{ id: `${i - 1}`, share: 1 }] },
  );
  expect(lotsInUse(answered(pedigree(lots))).slots).toBe(2);
});

it("the newest rank goes out first, each once", () => {
  const queue = new RankQueue(100);
  for (const rank of [3, 64, 31, 64, 99, 0]) queue.add(rank);
  expect(queue.count).toBe(5);
  expect([1, 2, 3, 4, 5].map(() => queue.takeNewest())).toEqual([99, 64, 31, 3, 0]);
});
