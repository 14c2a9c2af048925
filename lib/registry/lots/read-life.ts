import type { Database } from "@/lib/db";
import type { LotStatus } from "@/lib/schemas/lots/record-lot";
import { lotToMove } from "./lot-to-move";
import { type LotHead, readHead } from "./read-head";
import { recordIdsOfLot } from "./same-lot";
import { movesOf } from "./status-moves";

/** Where a lot stands in its life, where it may go, and what was grown of it. */
export interface LifeRead {
  readonly lot: LotHead;
  readonly grownIn: readonly { readonly id: string; readonly name: string; readonly sown: string | null }[];
  /** questions about the lot that nobody has answered */
  readonly questions: readonly { readonly id: string; readonly sentence: string }[];
  /** names of the strains of its variety */
  readonly strains: readonly string[];
  readonly moves: readonly LotStatus[];
}

/** Reads a lot's life. Ten statements at most; null where there is no such lot. */
export async function readLife(db: Database, lotId: string): Promise<LifeRead | null> {
  const lot = await readHead(db.read, lotId);
  if (!lot) return null;
  const lotIds = { in: await recordIdsOfLot(db.read, lotId) };
  const inOrder = { orderBy: { id: "asc" } } as const;
  return {
    lot,
    grownIn: await db.read.growOut.findMany({
      where: { parents: { some: { lotId: lotIds } } },
      select: { id: true, name: true, sown: true },
      ...inOrder,
    }),
    questions: await db.read.question.findMany({
      where: { lotId: lotIds, answeredAt: null },
      select: { id: true, sentence: true },
      ...inOrder,
    }),
    strains: (
      await db.read.strain.findMany({ where: { varietyId: lot.varietyId }, select: { name: true }, ...inOrder })
    ).map((strain) => strain.name),
    moves: movesOf(await lotToMove(db.read, lot)),
  };
}
