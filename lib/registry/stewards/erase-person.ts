import type { Actor } from "@/lib/access/actor";
import type { Database, Transaction } from "@/lib/db";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import { accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import type { PatchOf, TableName } from "../change-set/records";
import { delegateOf } from "../change-set/records";
import type { ChangeWriter } from "../change-set/writer";
import { returnsOfLoans } from "../transfers/loans";
import { forgetting } from "./without-name";

/** Where a person's name is written beside the person: what somebody noted of a hand. The words of a story stay as they were told. */
const written: Readonly<Partial<Record<TableName, readonly string[]>>> = {
  LedgerEntry: ["other", "notes"],
  Transfer: ["toWords", "purpose", "conditions", "told", "note"],
  Promise: ["words"],
  HolderConfirmation: ["note"],
  Story: ["teller"],
  LineageClaim: ["teller"],
  Steward: ["note"],
  Member: ["note"],
  Invitation: ["words"],
};

export interface ErasedPerson {
  readonly stewardId: string;
  /** entries of the history in which the name or contact stood */
  readonly forgotten: number;
}

/**
 * Erases a person: name, contact and address go for good, "a steward" stays with the seed. What was noted of them by name, and every entry of the
 * history that holds the name, the contact or the address, carries a mark instead. An account that acted for the steward, and whose way in was ended,
 * goes too. It cannot be taken back. Copies made before hold the name until
 * they are so old that they go.
 * Refused: nobody of that name here; an account that acts for the steward; seed lent to them, or by them, of which an answer is still waited for.
 */
export async function erasePerson(
  db: Database,
  actor: Actor,
  stewardId: string,
): Promise<Outcome<Performed<ErasedPerson>>> {
  return perform(db, actor, { action: "erase", title: "A steward’s name erased" }, async (change, tx) => {
    const person = await tx.person.findUnique({ where: { stewardId } });
    if (!person) {
      const needed = "choose one of the list who still has a name";
      return refused(refusal("unknown-steward", [], stewardId, "has no name here", needed));
    }
    const faults = await unsafe(tx, stewardId, person.name);
    if (faults.length > 0) return refused(...faults);
    const ended = await tx.member.findMany({ where: { stewardId }, include: { user: true } });
    const accounts = ended.flatMap(({ user }) => user ?? []);
    const words = [...(await everWritten(tx, person)), ...accounts.map((account) => account.name)];
    change.forget(forgetting(words, true));
    await change.remove("Person", [person.id]);
    for (const [table, columns] of Object.entries(written))
      await forgetIn(change, tx, table as TableName, columns, forgetting(words));
    for (const member of ended) await change.update("Member", member.id, { userId: null });
    await tx.user.deleteMany({ where: { id: { in: accounts.map((account) => account.id) } } });
    const forgotten = await forgetInHistory(tx, words);
    change.touchNothing();
    return accepted({ stewardId, forgotten });
  });
}

/** Name, contact and address as they stand and as they ever stood. */
async function everWritten(
  tx: Transaction,
  person: { readonly id: string } & Record<string, unknown>,
): Promise<string[]> {
  const changes = await tx.change.findMany({ where: { recordId: person.id }, select: { before: true, after: true } });
  const rows = changes
    .flatMap(({ before, after }) => [before, after])
    .flatMap((text) => (text ? [JSON.parse(text)] : []));
  const words = [person, ...rows].flatMap((row) =>
    ["name", "nameKey", "contact", "address"].map((field) => row[field]),
  );
  return [...new Set(words.filter((word) => typeof word === "string" && word !== ""))];
}

async function unsafe(tx: Transaction, stewardId: string, name: string): Promise<Refusal[]> {
  const faults: Refusal[] = [];
  if (await tx.member.findFirst({ where: { stewardId, endedAt: null } })) {
    const needed = "end that way in first, or let the account act for nobody";
    faults.push(refusal("has-account", [], name, "has an account that acts for this steward", needed));
  }
  const hands = { OR: [{ fromStewardId: stewardId }, { toStewardId: stewardId }] };
  const transfers = (await tx.transfer.findMany({ where: hands, include: { lot: true } })).map((each) => ({
    ...{ ...each, varietyId: each.lot.varietyId, onFirst: each.onFirst as CivilDay, onLast: each.onLast as CivilDay },
  }));
  const answered = returnsOfLoans(transfers);
  const waiting = transfers.find((each) => each.replyDue !== null && !answered.has(each.id));
  const promised = await tx.promise.findFirst({ where: { stewardId, keptOn: null }, include: { lot: true } });
  if (waiting || promised) {
    const lot = waiting?.lot ?? promised?.lot;
    const about = lot ? ` about seed of lot ${lot.number}` : "";
    const wrong = `is still waited for${about}: without a name nobody can ask`;
    faults.push(refusal("answer-open", [], name, wrong, "write the answer down, or let the promise go, first"));
  }
  return faults;
}

async function forgetIn(
  change: ChangeWriter,
  tx: Transaction,
  table: TableName,
  columns: readonly string[],
  without: (text: string) => string | null,
): Promise<void> {
  const some = { OR: columns.map((column) => ({ [column]: { not: null } })) };
  const find = delegateOf(tx, table).findMany as unknown as (args: unknown) => Promise<Record<string, unknown>[]>;
  const nullable = table === "Promise" ? {} : { where: some };
  for (const row of await find.call(delegateOf(tx, table), nullable)) {
    const patch = Object.fromEntries(
      columns.flatMap((column) => {
        const text = typeof row[column] === "string" ? without(row[column]) : null;
        return text === null ? [] : [[column, text]];
      }),
    );
    if (Object.keys(patch).length > 0) await change.update(table, String(row.id), patch as PatchOf<typeof table>);
  }
}

const rowsAtOnce = 2000;

/** Puts the mark into what the history keeps; who, when and what was done stays. */
async function forgetInHistory(tx: Transaction, words: readonly string[]): Promise<number> {
  const inJson = forgetting(words, true);
  const plain = forgetting(words);
  const marked = (without: typeof plain, text: string | null) => (text === null ? null : without(text)) ?? text;
  let forgotten = 0;
  for (let after = ""; ; ) {
    const rows = await tx.change.findMany({ where: { id: { gt: after } }, orderBy: { id: "asc" }, take: rowsAtOnce });
    for (const row of rows) {
      const data = { before: marked(inJson, row.before), after: marked(inJson, row.after) };
      if (data.before === row.before && data.after === row.after) continue;
      await tx.change.update({ where: { id: row.id }, data });
      forgotten += 1;
    }
    const last = rows.at(-1);
    if (!last || rows.length < rowsAtOnce) break;
    after = last.id;
  }
  for (const set of await tx.changeSet.findMany({ select: { id: true, title: true, reason: true, actor: true } })) {
    const data = {
      title: marked(plain, set.title) ?? set.title,
      reason: marked(plain, set.reason),
      actor: marked(plain, set.actor) ?? set.actor,
    };
    if (data.title === set.title && data.reason === set.reason && data.actor === set.actor) continue;
    await tx.changeSet.update({ where: { id: set.id }, data });
    forgotten += 1;
  }
  return forgotten;
}
