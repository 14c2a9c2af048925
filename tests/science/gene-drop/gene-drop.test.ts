import { describe, expect, it } from "vitest";
import { type GeneDropInput, geneDrop } from "@/lib/science/gene-drop/gene-drop";
import { SeededDraws } from "@/lib/science/gene-drop/seeded-draws";
import { lineage } from "@/lib/science/lineage/lineage";
import type { LineageLot, ParentShare } from "@/lib/science/lineage/lots";
import { answered, pathsOf } from "../agreement";

/** A tree of two to nine lots of every kind, small enough that chance shows. */
function randomTree(draws: SeededDraws): LineageLot[] {
  const whole = (low: number, high: number) => low + Math.floor(draws.next() * (high - low + 1));
  const lots: LineageLot[] = [];
  const founders = whole(1, 3);
  for (let i = 0; i < founders; i++) {
    const inbreeding = draws.chance(0.5) ? 0 : Math.round(draws.next() * 10) / 10;
    const coancestry = draws.chance(0.5) ? 0 : Math.round(draws.next() * 5 * (1 + inbreeding)) / 10;
    lots.push({ id: `f${i}`, kind: "founder", inbreeding, coancestry });
  }
  const grown = whole(1, 6);
  for (let i = 0; i < grown; i++) {
    const id = `l${i}`;
    const [one, other] = [whole(0, lots.length - 1), whole(0, lots.length - 1)];
    const share = one === other ? 1 : 0.25;
    const parents: ParentShare[] = [{ id: lots[one]?.id ?? "", share }];
    if (one !== other) parents.push({ id: lots[other]?.id ?? "", share: 0.75 });
    const kind = draws.next();
    if (kind < 0.15) lots.push({ id, kind: "blend", parents });
    else if (kind < 0.25) lots.push({ id, kind: "split", parents: [{ id: lots[one]?.id ?? "", share: 1 }] });
    else lots.push(growOut(id, parents, whole(2, 9), draws));
  }
  return lots;
}

function growOut(id: string, parents: ParentShare[], n: number, draws: SeededDraws): LineageLot {
  const separate = draws.chance(0.2);
  const apart = !separate && draws.chance(0.25);
  const seedParents = 1 + Math.floor(draws.next() * (separate ? 9 : n));
  const weights = (count: number) => Array.from({ length: count }, () => 0.1 + draws.next());
  const cv = !apart && draws.chance(0.3);
  const spread = (count: number) => ({ cv: Math.round(Math.sqrt(count - 1) * draws.next() * 100) / 100 });
  return {
    id,
    kind: "grow-out",
    parents,
    pollenParents: n,
    seedParents,
    sexes: separate ? "separate" : "hermaphrodite",
    selfIncompatible: apart,
    selfingRate: separate || apart || draws.chance(0.5) ? 0 : Math.round(draws.next() * 10) / 10,
    seedShares: cv ? spread(seedParents) : draws.chance(0.5) ? "equal" : weights(seedParents),
    pollenShares: cv && draws.chance(0.5) ? spread(n) : draws.chance(0.5) ? "equal" : weights(n),
    foreignPollen: draws.chance(0.7) ? 0 : Math.round(draws.next() * 10) / 10,
  };
}

describe("two hundred random trees", () => {
  it("agree with the lineage within 5.5 standard errors, for every lot and pair", () => {
    const draws = new SeededDraws(20_261_127);
    let compared = 0;
    for (let tree = 0; tree < 200; tree++) {
      const lots = randomTree(draws);
      const pairs = lots.flatMap(({ id: a }, i) => lots.slice(i).map(({ id: b }): [string, string] => [a, b]));
      const exact = answered(lineage({ lots, pairs }));
      const simulated = answered(geneDrop({ lots, pairs, replicates: 800, seed: tree }));
      const near = (name: string, mean: number, standardError: number, expected: number) => {
        compared += 1;
        // Where chance plays no part the two must be the same number.
        const allowed = Math.max(5.5 * standardError, 1e-9);
        if (Math.abs(mean - expected) > allowed) {
          expect.fail(`tree ${tree}, ${name}: ${mean} ± ${standardError} is not ${expected}\n${JSON.stringify(lots)}`);
        }
      };
      exact.lots.forEach(({ id, coancestry, inbreeding }, place) => {
        const of = simulated.lots[place];
        near(`coancestry of ${id}`, of?.coancestry.mean ?? 9, of?.coancestry.standardError ?? 0, coancestry);
        near(`inbreeding of ${id}`, of?.inbreeding.mean ?? 9, of?.inbreeding.standardError ?? 0, inbreeding);
      });
      exact.pairs.forEach(({ a, b, coancestry }, place) => {
        const of = simulated.pairs[place];
        near(`${a} with ${b}`, of?.coancestry.mean ?? 9, of?.coancestry.standardError ?? 0, coancestry);
      });
    }
    expect(compared).toBeGreaterThan(3000);
  });
});

const small: GeneDropInput = {
  lots: [
    { id: "f", kind: "founder" },
    { id: "a", kind: "grow-out", parents: [{ id: "f", share: 1 }], pollenParents: 10, seedParents: 4 },
    { id: "b", kind: "grow-out", parents: [{ id: "a", share: 1 }], pollenParents: 20, seedParents: 20 },
    { id: "c", kind: "grow-out", parents: [{ id: "b", share: 1 }], pollenParents: 8, seedParents: 5 },
  ],
  replicates: 3000,
  seed: 11,
};

it("10 plants with seed of 4, then 20, then 8 with seed of 5 come to 0.06875, 0.0915625 and 0.156856 (worked by hand from the recursion)", () => {
  const { lots } = answered(geneDrop(small));
  [0, 0.06875, 0.0915625, 0.156856].forEach((expected, place) => {
    const { mean, standardError } = lots[place]?.coancestry ?? { mean: 9, standardError: 0 };
    expect(Math.abs(mean - expected)).toBeLessThan(5 * standardError + 1e-6);
  });
});

it("the same seed gives the same answer, another seed another", () => {
  const some = { ...small, replicates: 20 };
  expect(geneDrop(some)).toEqual(geneDrop(some));
  expect(geneDrop({ ...some, seed: 12 })).not.toEqual(geneDrop(some));
});

it("one run, a seed that is no whole number, too many plants and what the lineage refuses are refused at their place", () => {
  expect(pathsOf(geneDrop({ ...small, replicates: 1 }))).toEqual([["replicates"]]);
  expect(pathsOf(geneDrop({ ...small, seed: 1.5 }))).toEqual([["seed"]]);
  expect(pathsOf(geneDrop({ ...small, replicates: 10_000_000 }))).toEqual([["replicates"]]);
  expect(pathsOf(geneDrop({ ...small, lots: small.lots.slice(1) }))).toEqual([["lots", 0, "parents", 0, "id"]]);
  expect(pathsOf(geneDrop({ ...small, pairs: [["a", "x"]] }))).toEqual([["pairs", 0, 1]]);
});
