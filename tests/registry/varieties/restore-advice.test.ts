import { describe, expect, it } from "vitest";
import type { LotToRestoreWith, RestoreGround } from "@/lib/registry/varieties/read-restore";
import { keptOutByForeignAlone, restoreAdvice, usable } from "@/lib/registry/varieties/restore-advice";

const lot = (number: string, more: Partial<LotToRestoreWith> = {}): LotToRestoreWith => ({
  ...{ id: number, number, year: "2020", holder: "Oda Fenlight", against: [], living: 1000, lifeAssumed: false },
  ...{ canGive: 500, keeps: "reserve", livingPerGram: 4, foreign: false, standing: "counted", founders: ["Rai 1"] },
  ...more,
});

const groundOf = (lots: LotToRestoreWith[], coancestry: number[][]): RestoreGround => ({
  lots,
  ground: {
    lots: lots.map(() => ({ inbreeding: 0, native: 1, shortestLine: 1, longestLine: 1, founders: { "Rai 1": 1 } })),
    coancestry,
    natives: null,
  },
  seedsWanted: { plants: 80, seeds: 100 },
  leftOut: 0,
});

const two = [
  [0.1, 0.03],
  [0.03, 0.08],
];
const nobody = { lots: new Set<string>(), foreign: false };

describe("advice to restore a variety", () => {
  it("is the mix of least coancestry, in living seeds and in grams (two lots 0.10, 0.08, between 0.03)", () => {
    const found = restoreAdvice(groundOf([lot("A"), lot("B")], two), 120, nobody);
    expect(found.nothing).toBeNull();
    expect(found.parts.map(({ share }) => share)[0]).toBeCloseTo(0.4166666667, 9);
    expect(found.parts.map(({ seeds, grams }) => [seeds, grams])).toEqual([
      [50, 12.5],
      [70, 17.5],
    ]);
    expect(found.kept).toBeCloseTo(1 - 0.0591666667, 9);
    expect(found.best).toMatchObject({ lot: { number: "B" }, kept: 0.92 });
  });

  it("takes of no lot more than it can give, and no more seed than all can give together", () => {
    const few = [lot("A"), lot("B", { canGive: 40 })];
    const capped = restoreAdvice(groundOf(few, two), 100, nobody);
    expect(capped.parts.map(({ seeds }) => seeds)).toEqual([60, 40]);
    const all = restoreAdvice(groundOf([lot("A", { canGive: 30 }), lot("B", { canGive: 20 })], two), 100, nobody);
    expect(all).toMatchObject({ seeds: 50, mostSeeds: 50 });
    expect(all.parts.map(({ seeds }) => seeds)).toEqual([30, 20]);
    // the second keeps most by itself and has too little: what is mixed to it is told, though it adds nothing to its kinship
    const ofIt = [
      [0.12, 0.05],
      [0.05, 0.05],
    ];
    const scarce = [lot("A"), lot("B", { canGive: 25 })];
    const found = restoreAdvice(groundOf(scarce, ofIt), 100, nobody);
    expect(found).toMatchObject({ nothing: null, best: { lot: { number: "B" } } });
    expect(found.parts.map(({ seeds }) => seeds)).toEqual([75, 25]);
  });

  it("leaves out what something stands against, unless it is overruled; what cannot be reckoned never comes in", () => {
    const held = lot("A", { against: [{ code: "on-hold", words: "is on hold", overridable: true }] });
    const unweighed = lot("B", {
      against: [{ code: "amount-not-known", words: "is not weighed", overridable: false }],
    });
    const lots = [held, unweighed, lot("C")];
    expect(usable(lots, nobody).map(({ id }) => id)).toEqual(["C"]);
    expect(usable(lots, { lots: new Set(["A", "B"]), foreign: false }).map(({ id }) => id)).toEqual(["A", "C"]);
    const pollen = { code: "foreign-pollen" as const, words: "has foreign genes", overridable: true };
    const crossed = [lot("D", { against: [pollen] }), lot("E", { against: [pollen, ...held.against] })];
    expect(usable([...crossed, held], { lots: new Set(), foreign: true }).map(({ id }) => id)).toEqual(["D"]);
    expect(keptOutByForeignAlone([...crossed, ...lots]).map(({ id }) => id)).toEqual(["D"]);
  });

  it("says when nothing would help, and why", () => {
    const why = (lots: LotToRestoreWith[], gram: number[][]) =>
      restoreAdvice(groundOf(lots, gram), 100, nobody).nothing;
    const flat = [
      [0.05, 0.05],
      [0.05, 0.05],
    ];
    const ofIt = [
      [0.05, 0.05],
      [0.05, 0.12],
    ];
    const against = [{ code: "on-hold" as const, words: "is on hold", overridable: true }];
    expect(why([lot("A"), lot("B")], flat)).toBe("all are one pool");
    expect(why([lot("A"), lot("B")], ofIt)).toBe("nothing is added");
    expect(why([lot("A"), lot("B", { against })], two)).toBe("one lot can be used");
    expect(why([lot("A", { canGive: 0 }), lot("B", { against })], two)).toBe("no lot can be used");
    expect(restoreAdvice({ ...groundOf([lot("A")], [[0.1]]), ground: null }, 100, nobody).nothing).toBe("no lineage");
  });

  it("keeps to the cautious kinship of native lots, whatever foreign pollen a lot that is left out has", () => {
    const against = [{ code: "foreign-pollen" as const, words: "has foreign genes", overridable: true }];
    const lots = [lot("A"), lot("B"), lot("C", { foreign: true, against })];
    const cautious = [
      [0.1, 0.03, 0],
      [0.03, 0.08, 0],
      [0, 0, 0.02],
    ];
    const { ground, ...rest } = groundOf(lots, cautious);
    // by the records alone, founders unrelated, the first two would have nothing in common
    const unrelated = cautious.map((row, i) => row.map((theta, j) => (i === j ? theta : 0)));
    const natives = { identical: unrelated, excess: unrelated.map((row) => row.map(() => 0)) };
    const found = restoreAdvice({ ...rest, ground: ground && { ...ground, natives } }, 120, nobody);
    expect(found.kept).toBeCloseTo(1 - 0.0591666667, 9);
    expect(found.best).toMatchObject({ lot: { number: "B" }, kept: 0.92 });
  });

  it("goes by native kinship where foreign pollen is taken in", () => {
    const lots = [lot("A"), lot("B", { foreign: true })];
    const base = groundOf(lots, [
      [0.1, 0.05],
      [0.05, 0.04],
    ]);
    const ground: RestoreGround = {
      ...base,
      ground: base.ground && {
        ...base.ground,
        lots: base.ground.lots.map((each, i) => ({ ...each, native: i === 1 ? 0.5 : 1 })),
        // native kinship t/k: 0.1, 0.1 between them, 0.16 inside the second: it adds nothing
        natives: {
          identical: [
            [0.1, 0.05],
            [0.05, 0.04],
          ],
          excess: [
            [0, 0],
            [0, 0],
          ],
        },
      },
    };
    const found = restoreAdvice(ground, 100, nobody);
    expect(found.best?.lot.number).toBe("A");
    expect(found.nothing).toBe("nothing is added");
  });
});
