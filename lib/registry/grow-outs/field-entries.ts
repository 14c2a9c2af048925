import type { Client, Transaction } from "@/lib/db";
import { accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";
import { delegateOf } from "../change-set/records";

/** The kinds of record that are made in the field and corrected by a new one. */
export type FieldTable = "StageCount" | "RoguePass" | "FloweringNote";

export const fieldNouns: Readonly<Record<FieldTable, string>> = {
  StageCount: "count",
  RoguePass: "rogue pass",
  FloweringNote: "flowering note",
};

interface Stored {
  readonly id: string;
  readonly growOutId: string | null;
  readonly stewardId: string | null;
  readonly replacesId: string | null;
}

/** A record that stands and can be corrected, with the name of its grow-out. Refused where there is none or another stands in its place. */
export async function recordToCorrect(
  db: Client | Transaction,
  table: FieldTable,
  id: string,
): Promise<Outcome<{ growOutId: string; name: string; stewardId: string | null; chain: readonly string[] }>> {
  if (!Object.hasOwn(fieldNouns, table))
    return refused(
      refusal("unknown", ["entry"], String(table), "is no kind of entry of a grow-out", "choose one of the list"),
    );
  const noun = fieldNouns[table];
  const rows = delegateOf(db, table) as unknown as {
    findUnique(args: { where: { id: string } }): Promise<Stored | null>;
    findFirst(args: { where: { replacesId: string } }): Promise<Stored | null>;
  };
  const row = await rows.findUnique({ where: { id } });
  const growOut = row?.growOutId ? await db.growOut.findUnique({ where: { id: row.growOutId } }) : null;
  if (!row || !growOut)
    return refused(refusal("unknown", ["entry"], id, `is no ${noun} of a grow-out`, "choose one of the list"));
  if (await rows.findFirst({ where: { replacesId: id } })) {
    const needed = "correct the one that stands in its place";
    return refused(refusal("corrected-already", ["entry"], noun, "was corrected before", needed));
  }
  // What it replaced, back to the first: taken back, they go together.
  const chain = [row.id];
  for (let earlier = row.replacesId; earlier !== null; ) {
    chain.push(earlier);
    earlier = (await rows.findUnique({ where: { id: earlier } }))?.replacesId ?? null;
  }
  return accepted({ growOutId: growOut.id, name: growOut.name, stewardId: row.stewardId, chain });
}

/** Sorted by a place. */
export function inThisOrder<T>(rows: readonly T[], place: (row: T) => number): T[] {
  return rows.toSorted((one, other) => place(one) - place(other));
}

/** Who counted, where that is no steward of this registry. */
export async function stewardFaults(tx: Transaction, stewardId: string | null): Promise<Refusal[]> {
  if (stewardId === null || (await tx.steward.findUnique({ where: { id: stewardId } }))) return [];
  return [refusal("unknown", ["by"], stewardId, "is no steward of this registry", "choose one of the list")];
}
