import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import { type Action, may } from "@/lib/access/permissions";
import { type Database, lockWrites, type Transaction } from "@/lib/db";
import type { Outcome, Refusal } from "@/lib/science/outcome";
import { ChangeWriter } from "./writer";

export interface Operation {
  readonly action: Action;
  readonly kind?: "entry" | "import" | "undo" | "start";
  /** what a person reads in the history */
  readonly title: string;
  readonly reason?: string | null;
  readonly undoesId?: string;
}

/** What an operation leaves: its value and its change set (null where nothing had to change). */
export interface Performed<T> {
  readonly value: T;
  readonly changeSetId: string | null;
  readonly revision: number;
}

/** Carries a refusal out of a transaction, so that the transaction is rolled back. */
class Refused extends Error {
  constructor(readonly refusals: readonly Refusal[]) {
    super("refused");
  }
}

/**
 * Runs one operation of the registry: asks for permission, opens a transaction, lets the work read and write through the change writer,
 * and stores the change set with it. A refusal by the work rolls everything back. An operation that wrote nothing leaves no change set.
 */
export async function perform<T>(
  db: Database,
  actor: Actor,
  operation: Operation,
  work: (change: ChangeWriter, tx: Transaction) => Promise<Outcome<T>>,
): Promise<Outcome<Performed<T>>> {
  const allowed = may(actor, operation.action);
  if (!allowed.ok) return allowed;
  try {
    const value = await db.write.$transaction(
      async (tx) => {
        await lockWrites(tx, db.engine);
        const last = await tx.changeSet.findFirst({ orderBy: { number: "desc" }, select: { number: true } });
        const revision = (last?.number ?? 0) + 1;
        const changeSetId = uuidv7();
        const change = new ChangeWriter(tx, db.engine, changeSetId, revision);
        const outcome = await work(change, tx);
        if (!outcome.ok) throw new Refused(outcome.refusals);
        if (change.size === 0) return { value: outcome.value, changeSetId: null, revision: revision - 1 };
        await change.finish({
          id: changeSetId,
          number: revision,
          at: new Date().toISOString(),
          atOffset: actor.offsetMinutes,
          kind: operation.kind ?? "entry",
          title: change.title ?? operation.title,
          reason: operation.reason ?? null,
          actor: actor.name,
          stewardId: actor.stewardId,
          undoesId: operation.undoesId ?? null,
        });
        return { value: outcome.value, changeSetId, revision };
      },
      { maxWait: 60_000, timeout: 300_000 },
    );
    return { ok: true, value };
  } catch (error) {
    if (error instanceof Refused) return { ok: false, refusals: error.refusals };
    throw error;
  }
}
