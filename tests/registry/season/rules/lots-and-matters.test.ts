import { describe, expect, it } from "vitest";
import type { OpenMatter } from "@/lib/registry/season/records";
import { balanceUnknown } from "@/lib/registry/season/rules/balance-unknown";
import { openMatters } from "@/lib/registry/season/rules/open-matter";
import { standingApart } from "@/lib/registry/season/rules/standing-apart";
import { madeLot, madeRecords } from "../made-records";

describe("a lot of unknown balance", () => {
  const of = (patch: object) => balanceUnknown(madeRecords({ lots: [madeLot(patch)] }));

  it("waits where nothing was ever entered", () => {
    expect(of({ gramsOnHand: null, entries: 0 })).toHaveLength(1);
  });

  it("does not wait where it is known, even to be nothing, or known in ears", () => {
    expect(of({ gramsOnHand: 0 })).toEqual([]);
    expect(of({ gramsOnHand: null, entries: 2 })).toEqual([]);
  });

  it("does not wait once the lot is finished", () => {
    expect(of({ gramsOnHand: null, entries: 0, status: "finished" })).toEqual([]);
  });
});

describe("a lot that stands apart", () => {
  const of = (status: string | null) =>
    standingApart(madeRecords({ lots: [madeLot({ status, statusReason: "weevils" })] }));

  it("waits in quarantine and on hold, with its reason", () => {
    expect(of("quarantine")[0]?.facts).toEqual({ status: "quarantine", reason: "weevils" });
    expect(of("hold")).toHaveLength(1);
  });

  it("does not wait in any other state", () => {
    expect([null, "usable", "closed", "discarded"].flatMap(of)).toEqual([]);
  });
});

describe("an open matter", () => {
  const matter: OpenMatter = {
    id: "q1",
    kind: "question",
    sentence: "Two plants carry tag 7.",
    day: "2026-01-01",
    varietyId: null,
    lotId: "l1",
    growOutId: null,
    testId: null,
  };

  it("is found under the variety of its lot", () => {
    expect(openMatters(madeRecords({ lots: [madeLot()], matters: [matter] }))[0]?.varietyId).toBe("v1");
  });

  it("cannot wait where it is a warning", () => {
    const items = openMatters(madeRecords({ matters: [matter, { ...matter, kind: "warning" }] }));
    expect(items.map((item) => item.urgency)).toEqual([1, 0]);
  });
});
