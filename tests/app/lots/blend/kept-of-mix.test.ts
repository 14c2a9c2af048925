import { describe, expect, it } from "vitest";
import {
  adviceFor,
  advisable,
  bestSingle,
  descentOfMix,
  keptOfMix,
  standingOfMix,
} from "@/app/lots/blend/_mix/kept-of-mix";
import { objectionsAmong } from "@/app/lots/blend/_mix/objections-among";
import type { BlendCandidate, BlendGround } from "@/lib/registry/lots/read-blend-ground";
import { answered } from "../../../science/agreement";
import { aCandidate } from "./a-candidate";

const mixLot = { inbreeding: 0, native: 1, shortestLine: 1, longestLine: 1, founders: { A: 1 } };

/** θ 0.1 and 0.2, unrelated, and a third of which the plants are not known. */
function groundOf(lots: readonly BlendCandidate[]): BlendGround {
  const own = [0.1, 0.2, 0.3];
  return {
    lots,
    ground: {
      lots: lots.map((lot) => ({ ...mixLot, native: 1 - (lot.foreignAncestry ?? 0) })),
      coancestry: lots.map((_, i) => lots.map((_, j) => (i === j ? (own[i] ?? 0) : 0))),
      natives: null,
    },
    founderLines: new Map([["A", "many"]]),
    leftOut: 0,
  };
}

const lots = [aCandidate("One"), aCandidate("Two"), aCandidate("Dark", { lineageKnown: false })];
const ground = groundOf(lots);

describe("what a mix keeps", () => {
  it("half and half of θ 0.1 and 0.2 keeps 0.925, more than the best alone", () => {
    expect(keptOfMix(ground, (lot) => (lot.number === "Dark" ? 0 : 1), false)?.share).toBeCloseTo(0.925, 12);
    const best = bestSingle(ground, lots, false);
    expect(best?.lot.number).toBe("One");
    expect(best?.kept.share).toBeCloseTo(0.9, 12);
  });

  it("of a lot whose ancestors were not counted there is no figure, but its lines and founders are told", () => {
    expect(keptOfMix(ground, () => 1, false)).toBeNull();
    expect(descentOfMix(ground, () => 1)).toMatchObject({ longestLine: 1, founders: [{ id: "A", part: 1 }] });
    const untold = groundOf([aCandidate("One", { foreignAncestry: null })]);
    expect(descentOfMix(untold, () => 1)).toBeNull();
  });

  it("stands for nothing where a self-pollinated founder may be one line or many", () => {
    expect(standingOfMix(ground, lots.slice(0, 2), "selfing")).toBe("counted");
    expect(standingOfMix(ground, lots, "outcrossing")).toBe("plants not known");
    expect(standingOfMix({ founderLines: new Map() }, lots.slice(0, 2), "selfing")).toBe("lines not known");
    expect(standingOfMix({ founderLines: new Map([["A", "one"]]) }, lots.slice(0, 2), "selfing")).toBe("uniform");
  });
});

describe("the advice", () => {
  it("is 2 to 1 for θ 0.1 and 0.2, and keeps the smallest share", () => {
    const among = advisable(lots, false);
    expect(among.map((lot) => lot.number)).toEqual(["One", "Two"]);
    const [one, two] = answered(adviceFor(ground, among, 0) ?? { ok: false, refusals: [] });
    expect([one?.share, two?.share]).toEqual([expect.closeTo(2 / 3, 9), expect.closeTo(1 / 3, 9)]);
    expect(answered(adviceFor(ground, among, 0.4) ?? { ok: false, refusals: [] })[1]?.share).toBeCloseTo(0.4, 12);
    expect(adviceFor(ground, among.slice(0, 1), 0)).toBeNull();
  });

  it("leaves out what is objected to, dead, not weighed, empty, of unknown line, and foreign pollen unless asked for", () => {
    const objection = { code: "on-hold" as const, number: "x", words: "is on hold", overridable: true };
    const dead = { ...(aCandidate("x").test as NonNullable<BlendCandidate["test"]>), germination: 0 };
    const open = [
      aCandidate("Held", { objections: [objection] }),
      aCandidate("Dead", { test: dead }),
      aCandidate("Untested", { test: null }),
      aCandidate("Unweighed", { thousandSeedGrams: null }),
      aCandidate("Empty", { grams: 0 }),
      aCandidate("Unknown", { grams: null }),
      aCandidate("Foreign", { foreignAncestry: 0.02 }),
    ];
    expect(advisable([...lots, ...open], false).map((lot) => lot.number)).toEqual(["One", "Two"]);
    expect(advisable([...lots, ...open], true).map((lot) => lot.number)).toEqual(["One", "Two", "Foreign"]);
  });
});

it("strains that are only said to be one are objected to once they stand together", () => {
  const strain = (relation: string | null) => ({ id: "s", name: "Rin’s keeping", relation });
  const kept = (relation: string | null) => aCandidate("Kept", { strain: strain(relation) });
  expect(objectionsAmong([kept(null)])).toEqual([]);
  expect(objectionsAmong([kept("possibly the same"), aCandidate("Main")]).map((each) => each.words)).toEqual([
    "is of the strain Rin’s keeping, not shown to be one with the others",
  ]);
  expect(objectionsAmong([kept("same"), aCandidate("Main")])).toEqual([]);
});
