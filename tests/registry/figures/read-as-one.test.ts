import { describe, expect, it } from "vitest";
import { figuresOfRecords } from "@/lib/registry/figures/figures-of-records";
import { asOneLot } from "@/lib/registry/figures/read-as-one";
import type { AllRecords, LotRecord } from "@/lib/registry/figures/records";
import type { BookedEntry } from "@/lib/registry/ledger/balance";
import { granted } from "../../setup/registry";

const profile = { matingSystem: "outcrossing", selfIncompatible: "no", outcrossingPctMin: 90, outcrossingPctMax: 100 };
const lot = (id: string, rest: Partial<LotRecord> = {}): LotRecord => ({
  ...{ id, number: id, varietyId: "v", holder: null, kind: "founder", growOutId: null, parents: [] },
  ...{ inbreeding: 0, thousandSeedGrams: null },
  ...rest,
});
const entry = (id: string, kind: string, amount: number): BookedEntry => ({
  ...{ id, kind, amount, unit: "g", replacesId: null, takenBack: false },
  ...{ onFirst: `2020-01-0${id}`, onLast: `2020-01-0${id}` },
});
const records = {
  varieties: [{ id: "v", name: "V", profile, clonal: false }],
  lots: [
    lot("A"),
    lot("B"),
    lot("M", {
      kind: "blend",
      parents: [
        { id: "A", share: 0.25 },
        { id: "B", share: 0.75 },
      ],
    }),
  ],
  growOuts: [],
  ledger: new Map([
    ["A", [entry("1", "received", 40)]],
    ["B", [entry("2", "received", 20), entry("3", "given", 50)]],
  ]),
  tests: new Map([
    ["A", [{ id: "1", name: "T1", date: "2020", first: "2020-01-01", sown: 10, normal: 9 }]],
    ["B", [{ id: "2", name: "T2", date: "2021", first: "2021-01-01", sown: 10, normal: 5 }]],
  ]),
};
const figures = (from: AllRecords) =>
  granted(figuresOfRecords(from)).map((each) => [each.lot, each.gramsOnHand, each.lastTest?.test, each.founders]);

describe("records of which several are one lot", () => {
  it("are the same where none points to another", () => {
    expect(asOneLot(records, new Map())).toBe(records);
  });

  it("give one lot with the ledgers and tests of both, and a mix of both is a mix of one", () => {
    expect(figures(records)).toEqual([
      ["A", 40, "T1", ["A"]],
      ["B", -30, "T2", ["B"]],
      ["M", null, undefined, ["A", "B"]],
    ]);
    // by hand: 40 + 20 − 50 = 10 g; the later test counts; the shares 0.25 and 0.75 are all of it
    const one = asOneLot(records, new Map([["B", "A"]]));
    expect(figures(one)).toEqual([
      ["A", 10, "T2", ["A"]],
      ["M", null, undefined, ["A"]],
    ]);
    expect(one.lots[1]?.parents).toEqual([{ id: "A", share: 1 }]);
  });

  it("leave a share unknown where one of the two is", () => {
    const [a, b, mix] = records.lots;
    if (!a || !b || !mix) throw new Error("no lots");
    const parents = [
      { id: "A", share: null },
      { id: "B", share: 0.75 },
    ];
    const one = asOneLot({ ...records, lots: [a, b, { ...mix, parents }] }, new Map([["B", "A"]]));
    expect(one.lots[1]?.parents).toEqual([{ id: "A", share: null }]);
  });

  it("hold what was recorded of two founders, once a pair, and nothing of one lot to itself", () => {
    const kinships = [
      { firstId: "A", secondId: "B", kind: "unrelated", coancestry: null },
      { firstId: "C", secondId: "B", kind: "same source", coancestry: null },
      { firstId: "A", secondId: "C", kind: "unrelated", coancestry: null },
    ] as const;
    const one = asOneLot({ ...records, kinships }, new Map([["B", "A"]]));
    expect(one.kinships).toEqual([{ firstId: "C", secondId: "A", kind: "same source", coancestry: null }]);
  });
});
