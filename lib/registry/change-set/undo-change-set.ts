import type { Actor } from "@/lib/access/actor";
import { type Database, references, type Transaction } from "@/lib/db";
import { accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";
import { refusedInDebt } from "../ledger/debts-of-undo";
import { erasedPicture } from "../photos/erased-picture";
import { erasedMark } from "../stewards/without-name";
import { grouped } from "./grouped";
import { nameOfRecord, nounOf } from "./name-of-record";
import { type Performed, perform } from "./perform";
import { delegateOf, type PatchOf, type TableName } from "./records";
import type { ChangeWriter } from "./writer";

export interface Reversal {
  readonly table: TableName;
  readonly id: string;
  readonly action: string;
  readonly before: Record<string, unknown> | null;
  readonly after: Record<string, unknown> | null;
}

/**
 * Takes a change set back in a new change set: what it made is removed, what it changed is as before, what it removed stands again.
 * Refused, with their names, where later records depend on what would go, where a later change stands on the same record, or where a jar would hold less
 * than nothing then.
 */
export async function undoChangeSet(
  db: Database,
  actor: Actor,
  changeSetId: string,
): Promise<Outcome<Performed<{ undone: number }>>> {
  const target = await db.read.changeSet.findUnique({ where: { id: changeSetId }, include: { undoneBy: true } });
  if (!target)
    return refused(
      refusal("unknown", ["changeSet"], changeSetId, "is no entry of the history", "choose one of the list"),
    );
  if (target.undoneBy) {
    return refused(
      refusal("undone-already", ["changeSet"], target.title, "was taken back already", "nothing is left to do"),
    );
  }
  const operation = {
    action: "undo" as const,
    kind: "undo" as const,
    title: `Taken back: ${target.title}`,
    undoesId: target.id,
  };
  return perform(db, actor, operation, async (change, tx) => {
    const reversals = await reversalsOf(tx, changeSetId);
    if (reversals.some(({ table }) => aboutPeople.has(table))) return refused(notHere(target.title));
    const gone = goneForGood(reversals);
    if (gone) return refused(refusal("not-undone", ["changeSet"], target.title, gone.wrong, gone.needed));
    const refusals = await againstReversal(tx, db.engine, reversals);
    if (refusals.length > 0) return refused(...refusals);
    const debts = await refusedInDebt(tx, reversals, () => reverse(change, reversals));
    if (debts.length > 0) return refused(...debts);
    change.touchAll();
    return accepted({ undone: reversals.length });
  });
}

/** What the history keeps of something that was erased brings nothing back. */
function goneForGood(reversals: readonly Reversal[]): { wrong: string; needed: string } | null {
  if (reversals.some(({ table, before }) => table === "Person" && before?.name === erasedMark))
    return { wrong: "was for good: no name is kept", needed: "write the steward’s name anew, if they want it back" };
  if (reversals.some(({ table, before }) => table === "Photo" && before?.hash === erasedPicture))
    return { wrong: "was for good: no picture is kept", needed: "put the picture there anew, if it may stand there" };
  return null;
}

/** What takes a change set back, in the reverse order of its writing. */
export async function reversalsOf(tx: Transaction, changeSetId: string): Promise<Reversal[]> {
  const rows = await tx.change.findMany({ where: { changeSetId }, orderBy: { position: "desc" } });
  return rows.map((row) => ({
    table: row.tableName as TableName,
    id: row.recordId,
    action: row.action,
    before: parsed(row.before),
    after: parsed(row.after),
  }));
}

/** Why it cannot be taken back: later records depend on what would go, or a later change stands on the same record. */
export async function againstReversal(
  tx: Transaction,
  engine: Database["engine"],
  reversals: readonly Reversal[],
): Promise<Refusal[]> {
  return [...(await dependents(engine, tx, reversals)), ...(await changedSince(tx, reversals))];
}

/** Who may come in is changed where it is seen whole: there must always be an owner, and what was ended must not come back unseen. */
const aboutPeople: ReadonlySet<string> = new Set(["Member", "MemberGrowOut", "Invitation"]);

function notHere(title: string): Refusal {
  const needed = "change it under Registry › Who may come in";
  return refusal("not-undone-here", ["changeSet"], title, "is about who may come in", needed);
}

function parsed(text: string | null): Record<string, unknown> | null {
  return text === null ? null : (JSON.parse(text) as Record<string, unknown>);
}

/** What a phone sent stays as it was sent, and which phones there are: no undoing makes it unsent. */
const staysSent: ReadonlySet<TableName> = new Set(["FieldDevice", "FieldRecord"]);

/**
 * What becomes of a record from the field whose entry is taken back: it is set aside, so that it is not taken again when the phone is next heard.
 * Seed taken in waits for its harvest again; what a person had decided of it is open again.
 */
function stateAfterUndo({ id, action, before, after }: Reversal, askedAgain: ReadonlySet<unknown>): string | null {
  if (action === "create") return "set aside";
  if (askedAgain.has(id)) return "question";
  if (before?.state === "question" && after?.state === "taken" && after.kind !== "taken") return "set aside";
  return typeof before?.state === "string" && before.state !== after?.state ? before.state : null;
}

async function setAsideWhatWasSent(change: ChangeWriter, reversals: readonly Reversal[]): Promise<void> {
  // Where a person's answer goes, the question is open again: it needs a record that can be settled.
  const asked = reversals.filter(
    ({ table, before, after }) => table === "Question" && !before?.answeredAt && after?.answeredAt,
  );
  const askedAgain = new Set(asked.flatMap(({ before }) => before?.fieldRecordId ?? []));
  for (const each of reversals.filter(({ table }) => table === "FieldRecord")) {
    const state = stateAfterUndo(each, askedAgain);
    if (state !== null)
      await change.update("FieldRecord", each.id, {
        ...fieldsThatChanged(each, each.before),
        state,
      } as PatchOf<"FieldRecord">);
  }
}

/** Runs of one table and one kind go together, in the reverse order of writing, so that children go before their parents. */
export async function reverse(change: ChangeWriter, all: readonly Reversal[]): Promise<void> {
  await setAsideWhatWasSent(change, all);
  const reversals = all.filter(({ table }) => !staysSent.has(table));
  let start = 0;
  while (start < reversals.length) {
    const first = reversals[start];
    if (!first) return;
    let end = start;
    while (reversals[end]?.table === first.table && reversals[end]?.action === first.action) end += 1;
    const run = reversals.slice(start, end);
    if (first.action === "create")
      await change.remove(
        first.table,
        run.map((each) => each.id),
      );
    else if (first.action === "remove")
      await change.createAll(
        first.table,
        run.map((each) => each.before as never),
      );
    else {
      for (const each of run)
        await change.update(first.table, each.id, fieldsThatChanged(each, each.before) as PatchOf<typeof first.table>);
    }
    start = end;
  }
}

function fieldsThatChanged(reversal: Reversal, from: Record<string, unknown> | null): Record<string, unknown> {
  const { before, after } = reversal;
  if (!before || !after || !from) return {};
  return Object.fromEntries(
    Object.keys(after)
      .filter((key) => after[key] !== before[key])
      .map((key) => [key, from[key]]),
  );
}

/** A record that stood before and that this change set made to point there: taken back, it points to what it did. */
function pointedElsewhere(reversals: readonly Reversal[], table: TableName, id: string, column: string): boolean {
  return reversals.some(
    (each) =>
      each.table === table &&
      each.id === id &&
      each.action === "update" &&
      each.before?.[column] !== each.after?.[column],
  );
}

/** Records outside the change set that point to one that it made. */
async function dependents(
  engine: Database["engine"],
  tx: Transaction,
  reversals: readonly Reversal[],
): Promise<Refusal[]> {
  const made = reversals.filter((each) => each.action === "create" && !staysSent.has(each.table));
  const going = new Set(made.map((each) => each.id));
  const byTable = grouped(made, (each) => each.table);
  const refusals: Refusal[] = [];
  for (const reference of await references(tx, engine)) {
    const pointedTo = byTable.get(reference.to as TableName);
    if (!pointedTo || reference.table === "ChangeSet" || reference.table === "Change") continue;
    const table = reference.table as TableName;
    for (const row of await pointing(
      tx,
      table,
      reference.column,
      pointedTo.map((each) => each.id),
    )) {
      if (going.has(row.id) || pointedElsewhere(reversals, table, row.id, reference.column)) continue;
      const what = pointedTo.find((each) => each.id === row[reference.column]);
      const name = `${nounOf(table)} ${await nameOfRecord(tx, table, row)}`;
      const on = what ? `${nounOf(what.table)} ${await nameOfRecord(tx, what.table, what.after ?? {})}` : "it";
      refusals.push(refusal("depended-on", [table, row.id], name, `depends on ${on}`, "take that back first"));
    }
  }
  return refusals;
}

async function pointing(tx: Transaction, table: TableName, column: string, ids: readonly string[]) {
  const rows: ({ id: string } & Record<string, unknown>)[] = [];
  const find = delegateOf(tx, table).findMany as unknown as (args: unknown) => Promise<typeof rows>;
  for (let start = 0; start < ids.length; start += 500) {
    rows.push(
      ...(await find.call(delegateOf(tx, table), { where: { [column]: { in: ids.slice(start, start + 500) } } })),
    );
  }
  return rows;
}

/** Records that were changed again after the change set. */
async function changedSince(tx: Transaction, reversals: readonly Reversal[]): Promise<Refusal[]> {
  const refusals: Refusal[] = [];
  const latest = new Map<string, Reversal>();
  for (const each of reversals) if (!latest.has(each.id)) latest.set(each.id, each);
  const written = [...latest.values()].filter((each) => each.action !== "remove");
  for (const [table, own] of grouped(written, (each) => each.table)) {
    const found = new Map<string, Record<string, unknown>>();
    for (let start = 0; start < own.length; start += 500) {
      const ids = own.slice(start, start + 500).map((each) => each.id);
      for (const row of await delegateOf(tx, table).findMany({ where: { id: { in: ids } } })) found.set(row.id, row);
    }
    for (const each of own) {
      const row = found.get(each.id);
      const kept =
        row && Object.entries(each.after ?? {}).every(([key, value]) => key === "revision" || same(row[key], value));
      if (kept) continue;
      const name = `${nounOf(table)} ${await nameOfRecord(tx, table, row ?? each.after ?? {})}`;
      refusals.push(
        refusal(
          "changed-since",
          [table, each.id],
          name,
          row ? "was changed again later" : "was removed later",
          "take the later change back first",
        ),
      );
    }
  }
  return refusals;
}

function same(stored: unknown, noted: unknown): boolean {
  return stored === noted || (stored ?? null) === (noted ?? null);
}
