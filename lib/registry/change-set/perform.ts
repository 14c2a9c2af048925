import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import { type Action, may } from "@/lib/access/permissions";
import { type Database, lockWrites, type Transaction } from "@/lib/db";
import { type Outcome, type Refusal, refusal } from "@/lib/science/outcome";
import { ownershipFaults } from "../ownership/check-ownership";
import { seenBy } from "../privacy/seen-by";
import type { TableName } from "./records";
import { isTaken } from "./refused-by-database";
import { storageRefusalOf } from "./storage-refusal";
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
 * Runs one operation of the registry: asks for permission, opens a transaction, lets the work read what the actor may see and write through
 * the change writer, asks whether what was written was the actor's to write, and stores the change set with it. A refusal rolls everything back.
 * An operation that wrote nothing leaves no change set.
 */
export async function perform<T>(
  db: Database,
  actor: Actor,
  operation: Operation,
  work: (change: ChangeWriter, tx: Transaction) => Promise<Outcome<T>>,
): Promise<Outcome<Performed<T>>> {
  const allowed = may(actor, operation.action);
  if (!allowed.ok) return allowed;
  // Who comes in by an invitation has no part in the registry yet: the invitation says what is written, and only about them.
  const comesIn = operation.action === "come-in";
  const { write } = comesIn ? (db.whole ?? db) : seenBy(db.whole ?? db, actor);
  try {
    const value = await write.$transaction(
      async (tx) => {
        await lockWrites(tx, db.engine);
        const last = await tx.changeSet.findFirst({ orderBy: { number: "desc" }, select: { number: true } });
        const revision = (last?.number ?? 0) + 1;
        const changeSetId = uuidv7();
        const change = new ChangeWriter(tx, db.engine, changeSetId, revision, handOfActor(actor));
        const outcome = await work(change, tx);
        if (!outcome.ok) throw new Refused(outcome.refusals);
        const notOwn = comesIn ? [] : await ownershipFaults(tx, actor, change.written);
        if (comesIn && change.written.some(({ table }) => !aboutComingIn.has(table)))
          throw new Error("who comes in writes nothing but that");
        if (notOwn.length > 0) throw new Refused(notOwn);
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
    if (actor.role !== "owner" && isTaken(error)) return { ok: false, refusals: [takenUnseen] };
    const storage = storageRefusalOf(error, db.engine === "sqlite" ? db.location.url : "the registry's server");
    if (storage) return { ok: false, refusals: [storage] };
    throw error;
  }
}

/** Who keeps seed for one steward and names nobody means that one. The owner may mean nobody. */
function handOfActor({ role, stewardId }: Actor): string | null {
  return role === "owner" || role === "helper" ? null : stewardId;
}

const aboutComingIn: ReadonlySet<TableName> = new Set(["Member", "MemberGrowOut", "Invitation"]);

/** A name or number that a record bears which the actor may not see: it is refused without saying whose. */
const takenUnseen = refusal(
  "cannot-be-used",
  [],
  "",
  "cannot be stored so: a name or number in it cannot be used here",
  "choose another, or ask the owner",
);
