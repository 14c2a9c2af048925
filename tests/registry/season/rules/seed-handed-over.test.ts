import { describe, expect, it } from "vitest";
import type { SeasonRecords, StoredPromise, StoredTransfer } from "@/lib/registry/season/records";
import { promiseOverdue } from "@/lib/registry/season/rules/promise-overdue";
import { quarantineLong } from "@/lib/registry/season/rules/quarantine-long";
import { replyDue } from "@/lib/registry/season/rules/reply-due";
import { standingApart } from "@/lib/registry/season/rules/standing-apart";
import { madeLot, madeRecords } from "../made-records";

// The day of these records is 2026-03-10.
const transfer = (patch: Partial<StoredTransfer> = {}): StoredTransfer => ({
  ...{ id: "t1", kind: "gift", varietyId: "v1", lotId: "l1", newLotId: "l2", fromStewardId: "s1", toStewardId: "s2" },
  ...{ toWords: null, on: "2024-04", onFirst: "2024-04-01", onLast: "2024-04-30", amount: 20, unit: "g", grams: 20 },
  replyDue: "2025-10",
  ...patch,
});

const promise = (patch: Partial<StoredPromise> = {}): StoredPromise => ({
  ...{ id: "p1", transferId: "t1", varietyId: "v1", lotId: "l1", stewardId: "s2" },
  ...{ words: "will grow 100", due: "2026-02", keptOn: null },
  ...patch,
});

const names = new Map([["s2", "Rin Olderwick"]]);

describe("a promise", () => {
  const of = (patch: Partial<StoredPromise>) => promiseOverdue(madeRecords({ promises: [promise(patch)], names }));

  it("is late once the last possible day of its date is past", () => {
    // from 28 February to 10 March of 2026 are ten days
    expect(of({})[0]?.facts).toMatchObject({ name: "Rin Olderwick", daysLate: 10 });
    expect(of({ due: "2026-03-09" })).toHaveLength(1);
  });

  it("is not late on its day, within its year, without a date, or once it was kept", () => {
    expect(of({ due: "2026-03-10" })).toEqual([]);
    expect(of({ due: "2026" })).toEqual([]);
    expect(of({ due: null })).toEqual([]);
    expect(of({ keptOn: "2026-03-01" })).toEqual([]);
  });
});

describe("an answer to seed that was given", () => {
  const of = (patch: Partial<SeasonRecords>) => replyDue(madeRecords({ transfers: [transfer()], names, ...patch }));
  const word = { id: "w", varietyId: "v1", stewardId: "s2", lotId: null, still: "yes" };

  it("waits once its day is past", () => {
    // from 31 October 2025 to 10 March 2026: 30 + 31 + 31 + 28 + 10 days
    expect(of({})[0]?.facts).toMatchObject({ name: "Rin Olderwick", daysLate: 130 });
    const outside = transfer({ toStewardId: null, newLotId: null, toWords: "a reader" });
    expect(of({ transfers: [outside] })[0]?.facts.name).toBe("a reader");
  });

  it("does not wait before its day, or where none is due", () => {
    expect(of({ transfers: [transfer({ replyDue: "2026" })] })).toEqual([]);
    expect(of({ transfers: [transfer({ replyDue: null })] })).toEqual([]);
  });

  it("does not wait after a word of that steward about that variety, or once seed came back", () => {
    expect(of({ words: [{ ...word, on: "2025-01-05", onFirst: "2025-01-05" }] })).toEqual([]);
    expect(of({ words: [{ ...word, on: "2024-04-02", onFirst: "2024-04-02" }] })).toHaveLength(1);
    expect(of({ words: [{ ...word, varietyId: "v2", on: "2025", onFirst: "2025-01-01" }] })).toHaveLength(1);
    const loan = transfer({ kind: "loan" });
    const back = transfer({
      ...{ id: "t2", kind: "return", lotId: "l9", fromStewardId: "s2", toStewardId: "s1" },
      replyDue: null,
    });
    expect(of({ transfers: [loan, { ...back, onFirst: "2025-11-01", onLast: "2025-11-01" }] })).toEqual([]);
  });

  it("leaves the waiting to a promise that went with it", () => {
    expect(of({ promises: [promise()] })).toEqual([]);
    expect(of({ promises: [promise({ due: null })] })).toHaveLength(1);
  });
});

describe("a lot in quarantine", () => {
  const of = (onLast: string, status = "quarantine") => {
    const lots = [madeLot({ id: "l2", status, statusReason: "came back" })];
    const records = madeRecords({ lots, transfers: [transfer({ onLast })] });
    return [quarantineLong(records).length, standingApart(records).length];
  };

  it("waits for a decision once two seasons are past, and stands apart until then", () => {
    expect(of("2024-03-09")).toEqual([1, 0]);
    expect(of("2024-03-10")).toEqual([0, 1]);
  });

  it("on hold is another matter, and one of which nobody knows when it came is only apart", () => {
    expect(of("2020-01-01", "hold")).toEqual([0, 1]);
    const unknown = madeRecords({ lots: [madeLot({ status: "quarantine" })] });
    expect([quarantineLong(unknown).length, standingApart(unknown).length]).toEqual([0, 1]);
  });
});
