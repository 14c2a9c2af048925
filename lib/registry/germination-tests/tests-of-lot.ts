import type { Client, Transaction } from "@/lib/db";
import type { Interval } from "@/lib/science/binomial/interval";
import { recordIdsOfLot } from "../lots/same-lot";
import { intervalOfCounts } from "./interval-of-counts";
import { type TestTotals, testTotals } from "./test-totals";

/** One of a lot's tests, summed up. */
export interface TestOfLot {
  readonly id: string;
  readonly name: string;
  readonly on: string;
  readonly onFirst: string;
  readonly onLast: string;
  readonly basis: string | null;
  readonly finalCountDay: number | null;
  readonly totals: TestTotals;
  /** normal of sown, with its exact 95 % interval; null where nothing was counted yet */
  readonly germination: ({ readonly share: number } & Interval) | null;
}

/** The tests of a lot with their replicates, in the order of their first possible day, then of entry. */
export async function storedTestsOfLot(db: Client | Transaction, lotId: string) {
  return db.germinationTest.findMany({
    where: { lotId: { in: await recordIdsOfLot(db, lotId) } },
    orderBy: [{ onFirst: "asc" }, { id: "asc" }],
    include: { replicates: { orderBy: { id: "asc" }, include: { counts: { orderBy: { id: "asc" } } } } },
  });
}

export type StoredTest = Awaited<ReturnType<typeof storedTestsOfLot>>[number];

/** A stored test summed up. */
export function summedUp(test: StoredTest): TestOfLot {
  const totals = testTotals(test);
  const normal = totals.sums.normal ?? 0;
  const { id, name, on, onFirst, onLast, basis, finalCountDay } = test;
  const interval = totals.counted ? intervalOfCounts(normal, totals.sown) : null;
  const germination = interval && { share: normal / totals.sown, low: interval.low, high: interval.high };
  return { id, name, on, onFirst, onLast, basis, finalCountDay, totals, germination };
}
