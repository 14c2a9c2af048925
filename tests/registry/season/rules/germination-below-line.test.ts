import { describe, expect, it } from "vitest";
import { germinationBelowLine } from "@/lib/registry/season/rules/germination-below-line";
import { madeLot, madeRecords, madeTest } from "../made-records";

const waiting = (normal: number, sown: number, patch = {}) =>
  germinationBelowLine(madeRecords({ lots: [madeLot({ lastTest: madeTest(normal, sown), ...patch })] }));

describe("a lot that germinates below the line", () => {
  it("waits below 70 % and not at 70 %", () => {
    expect(waiting(70, 100)).toEqual([]);
    expect(waiting(69, 100)[0]?.facts).toMatchObject({ which: "plan", line: 0.7 });
  });

  it("is urgent below 50 % and not at 50 %", () => {
    expect(waiting(50, 100)[0]?.facts.which).toBe("plan");
    expect(waiting(49, 100)[0]).toMatchObject({ urgency: 0, facts: { which: "urgent", line: 0.5 } });
  });

  it("can wait where another lot of the variety comes up well, and names it", () => {
    const lots = [
      madeLot({ lastTest: madeTest(10, 100) }),
      madeLot({ id: "l2", number: "Quern 2", lastTest: madeTest(70, 100) }),
      madeLot({ id: "l3", number: "Quern 3", lastTest: madeTest(95, 100), gramsOnHand: 0 }),
    ];
    const [item] = germinationBelowLine(madeRecords({ lots }));
    expect(item).toMatchObject({ urgency: 2, facts: { better: { number: "Quern 2" } } });
  });

  it("says with which chance the seed truly lies below the line", () => {
    // One seed, not germinated: Beta(1/2, 3/2) is known in closed form, (2/π)(asin √v + √(v(1 − v))) at v = 1/2.
    const chance = (2 / Math.PI) * (Math.asin(Math.sqrt(0.5)) + 0.5);
    expect(waiting(0, 1)[0]?.facts.chanceBelow).toBeCloseTo(chance, 10);
  });

  it("does not wait once it is finished, empty or never tested", () => {
    expect(waiting(10, 100, { status: "finished" })).toEqual([]);
    expect(waiting(10, 100, { gramsOnHand: 0 })).toEqual([]);
    expect(germinationBelowLine(madeRecords({ lots: [madeLot()] }))).toEqual([]);
  });

  it("waits where nobody knows how much is left", () => {
    expect(waiting(10, 100, { gramsOnHand: null })).toHaveLength(1);
  });
});
