import type { Client, Prisma, Transaction } from "@/lib/db";
import { foldName } from "../names/fold-name";
import { oneMeant } from "../search/one-meant";

/** What must be read of a record before it is said to be of the same lot as another. */
const select = {
  id: true,
  number: true,
  code: true,
  kind: true,
  year: true,
  varietyId: true,
  holderId: true,
  growOutId: true,
  sameAsId: true,
  thousandSeedGrams: true,
  inbreeding: true,
  founderLines: true,
  status: true,
  treatment: true,
  donorNumber: true,
  isolationGrade: true,
  identityGrade: true,
  variety: { select: { name: true, cropId: true, crop: { select: { commonName: true } } } },
  holder: { select: { person: { select: { name: true } } } },
  strain: { select: { name: true } },
  growOut: { select: { name: true } },
  parents: { select: { parentLotId: true, share: true, parent: { select: { number: true } } }, orderBy: { id: "asc" } },
  sameAs: { select: { number: true } },
  otherRecords: { select: { id: true, number: true }, orderBy: { id: "asc" } },
} satisfies Prisma.LotSelect;

export type RecordOfLot = Prisma.LotGetPayload<{ select: typeof select }>;

export async function recordOfLot(db: Client | Transaction, id: string): Promise<RecordOfLot | null> {
  return db.lot.findUnique({ where: { id }, select });
}

/** The record that a number or a label code means; null where it means none, or several. */
export async function recordNamed(db: Client | Transaction, written: string): Promise<RecordOfLot | null> {
  const code = written.replace(/[\s-]/g, "").toUpperCase();
  const found = await db.lot.findMany({ where: { OR: [{ numberKey: foldName(written) }, { code }] }, select });
  return oneMeant(written, found, (each) => each.number) ?? found.find((each) => each.code === code) ?? null;
}

/** Where a record says that its seed is from: "harvested from Quern 2019". */
export function parentageOf({ kind, growOut, parents }: RecordOfLot): string {
  if (growOut) return `harvested from ${growOut.name}`;
  if (parents.length === 0) return "a founder, its parents not on record";
  const from = parents.map(
    ({ parent, share }) => `${parent.number}${share === null || share === 1 ? "" : ` (${share})`}`,
  );
  return `${kind === "split" ? "split from" : "blended from"} ${from.join(", ")}`;
}
