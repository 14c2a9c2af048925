import type { Client, Prisma, Transaction } from "@/lib/db";
import { compareDays } from "@/lib/science/dates/civil-day";
import { summedUp, type TestOfLot } from "../germination-tests/tests-of-lot";
import type { LotInHand } from "./objections";

const rowsOfRecord = {
  ledger: { orderBy: { id: "asc" } },
  tests: {
    orderBy: [{ onFirst: "asc" }, { id: "asc" }],
    include: { replicates: { orderBy: { id: "asc" }, include: { counts: { orderBy: { id: "asc" } } } } },
  },
  warnings: { where: { closedOn: null }, select: { reason: true } },
} satisfies Prisma.LotSelect;

const select = {
  id: true,
  number: true,
  varietyId: true,
  strainId: true,
  holderId: true,
  kind: true,
  origin: true,
  status: true,
  statusReason: true,
  treatment: true,
  treatmentSubstance: true,
  year: true,
  yearFirst: true,
  yearLast: true,
  yearWords: true,
  thousandSeedGrams: true,
  isolationGrade: true,
  isolationReasons: true,
  identityGrade: true,
  howSure: true,
  strain: { select: { id: true, name: true, relation: true } },
  variety: { select: { id: true, name: true, crop: { select: { id: true, commonName: true, clonal: true } } } },
  ...rowsOfRecord,
  otherRecords: { select: { id: true, ...rowsOfRecord } },
} satisfies Prisma.LotSelect;

type Stored = Prisma.LotGetPayload<{ select: typeof select }>;

/** A lot with all that must be known of it before seed is taken out of its jar, its other records' rows among its own. */
export type LotRead = Omit<Stored, "otherRecords">;

/** Lots by the ids that they were asked for under: that of their own record or of another of the same lot. */
export async function lotsInHand(db: Client | Transaction, ids: readonly string[]): Promise<Map<string, LotRead>> {
  const asked = { in: [...ids] };
  const where = { sameAsId: null, OR: [{ id: asked }, { otherRecords: { some: { id: asked } } }] };
  const byId = new Map<string, LotRead>();
  for (const { otherRecords, ...lot } of await db.lot.findMany({ where, select })) {
    const records = [lot, ...otherRecords];
    const whole = {
      ...lot,
      ledger: inOrder(records.flatMap(({ ledger }) => ledger)),
      tests: inOrder(records.flatMap(({ tests }) => tests)).sort((a, b) => compareDays(a.onFirst, b.onFirst)),
      warnings: records.flatMap(({ warnings }) => warnings),
    };
    for (const { id } of records) byId.set(id, whole);
  }
  return byId;
}

function inOrder<Row extends { readonly id: string }>(rows: Row[]): Row[] {
  return rows.sort((a, b) => (a.id < b.id ? -1 : 1));
}

export function lotInHand({ warnings, ...lot }: LotRead): LotInHand {
  return { ...lot, tested: lastCounted(lot) !== null, openWarnings: warnings.map((each) => each.reason) };
}

/** What the last test that was counted says: share, with its exact 95 % interval. Null where nothing was counted. */
export function lastCounted({ tests }: Pick<LotRead, "tests">): TestOfLot["germination"] {
  return tests.map((test) => summedUp(test).germination).findLast((germination) => germination !== null) ?? null;
}
