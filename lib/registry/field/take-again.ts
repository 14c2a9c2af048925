import type { Actor } from "@/lib/access/actor";
import type { Action } from "@/lib/access/permissions";
import type { Database, Transaction } from "@/lib/db";
import { accepted, type Outcome, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import type { ChangeWriter } from "../change-set/writer";
import { FieldGround } from "./field-ground";
import { Heap } from "./heap";
import { waitsFor } from "./stored-record";
import type { HowTaken, Taking } from "./taking";

/** What stored records are taken by, inside a change set. */
export function takingOf(db: Database, actor: Actor, now: Date, change: ChangeWriter, tx: Transaction): Taking {
  return { change, tx, engine: db.engine, location: db.location, actor, now, ground: new FieldGround(tx) };
}

interface Again {
  readonly action: Action;
  readonly title: string;
  readonly reason?: string | null;
  readonly how?: HowTaken;
  /** the answer to what was asked */
  readonly words?: string;
}

/**
 * Takes records that are stored and not settled, in one change set, or none of them: refused with what stands against the first that cannot be taken.
 * What is settled already is passed over.
 */
export async function takeAgain(
  db: Database,
  actor: Actor,
  ids: readonly string[],
  now: Date,
  { action, title, reason = null, how, words }: Again,
): Promise<Outcome<Performed<{ taken: number; harvests: readonly string[] }>>> {
  return perform(db, actor, { action, title, reason }, async (change, tx) => {
    const rows = await tx.fieldRecord.findMany({
      where: { id: { in: [...ids] } },
      orderBy: [{ deviceId: "asc" }, { sequence: "asc" }],
    });
    const growOutIds = [...new Set(rows.flatMap((row) => row.growOutId ?? []))];
    const coming = { clockAhead: null, missingBefore: () => false, takenBack: new Set<string>() };
    const heap = new Heap(takingOf(db, actor, now, change, tx), coming, {
      growOutIds,
      deviceId: rows[0]?.deviceId ?? "",
    });
    let taken = 0;
    for (const { id } of rows) {
      const row = await tx.fieldRecord.findUniqueOrThrow({ where: { id } });
      if (row.state !== "question") continue;
      const judged = await heap.again(row, how, words);
      if (!judged.ok) return refused(...judged.refusals);
      taken += 1;
    }
    change.title ??= title;
    return accepted({ taken, harvests: [...heap.harvests] });
  });
}

/**
 * A picture's file has come: the records that waited for it are taken. One that cannot be taken stays as it is; whoever looks at what came home sees why.
 */
export async function photoHasCome(db: Database, actor: Actor, sentHash: string, now: Date): Promise<void> {
  const waiting = await (db.whole ?? db).read.fieldRecord.findMany({
    where: { kind: "photo", state: "question", body: { contains: sentHash } },
  });
  for (const row of waiting) {
    if (waitsFor(row) !== sentHash) continue;
    await takeAgain(db, actor, [row.id], now, { action: "record-in-field", title: "A picture from the field" });
  }
}
