import type { Actor } from "@/lib/access/actor";
import type { Transaction } from "@/lib/db";
import { type Refusal, refusal } from "@/lib/science/outcome";
import { grouped } from "../change-set/grouped";
import { nameOfRecord, nounOf } from "../change-set/name-of-record";
import type { TableName } from "../change-set/records";
import type { Noted } from "../change-set/writer";
import { type Row, RowsAtHand } from "./rows-at-hand";
import { ownership } from "./rules";
import { type Written, writtenRows } from "./written-rows";

const mostSaid = 5;

/**
 * What an actor wrote that is not theirs to write, with its name and who may: a steward's lots, grow-outs and what hangs on them; a helper's
 * named grow-outs, in the field's tables; a librarian's library (with no steward: every lot), at the desk's tables. Asked of every change set
 * when its work is done, from what was really written, so that no operation can forget it.
 */
export async function ownershipFaults(tx: Transaction, actor: Actor, notes: readonly Noted[]): Promise<Refusal[]> {
  if (actor.role === "owner") return [];
  const written = writtenRows(notes);
  const rows = new RowsAtHand(tx);
  for (const { table, id, before, after } of written) rows.know(table, id, (after ?? before) as Row);
  await rows.follow(
    written.flatMap(({ table, before, after }) => [before, after].flatMap((row) => (row ? [{ table, row }] : []))),
  );
  const ground = new Ground(actor, rows, written, await keepersOf(tx, written));
  const faults: Refusal[] = [];
  for (const each of written) {
    if (ground.mayWrite(each)) continue;
    if (faults.length === mostSaid) break;
    const row = (each.before ?? each.after) as Row;
    const name = `${nounOf(each.table)} ${await nameOfRecord(tx, each.table, row)}`;
    const needed = await whoMay(tx, handOf(rows, each.table, row));
    faults.push(refusal("not-yours", [each.table, each.id], name, "is not yours to write", needed));
  }
  return faults;
}

/** A row as it would be written: `changed` stands for whatever may be put right of one that is there. */
export type Intended = Pick<Written, "table" | "how"> & { readonly row: Row };

/**
 * Which of these an actor could write, each for itself, by the same rules and before anything is typed: for pages, which offer nothing that would be
 * refused. What the role itself may not do is asked elsewhere (lib/access). A few statements, however many they are.
 */
export async function mayWrite(tx: Transaction, actor: Actor, all: readonly Intended[]): Promise<boolean[]> {
  if (actor.role === "owner") return all.map(() => true);
  const written = all.map(({ table, how, row }): Written => {
    return { table, id: String(row.id ?? ""), how, before: how === "added" ? null : row, after: row };
  });
  const rows = new RowsAtHand(tx);
  for (const { table, id, after } of written) if (id !== "") rows.know(table, id, after as Row);
  await rows.follow(all);
  const keepers = await keepersOf(tx, written);
  return written.map((each) => new Ground(actor, rows, [each], keepers).mayWrite(each));
}

/** In words, who may write of a row: the steward whose it is, where that is told, and the owner; of a variety whoever keeps it. */
export async function whoMayWrite(tx: Transaction, table: TableName, row: Row): Promise<string> {
  if (table === "Variety") return "whoever holds seed of it, grows it or keeps a strain of it may, and the owner";
  const rows = new RowsAtHand(tx);
  await rows.follow([{ table, row }]);
  return whoMay(tx, handOf(rows, table, row));
}

/** Whose hands keep a variety, by its id: the holders of its lots, the stewards of its grow-outs and strains; nobody's is null. */
type Keepers = ReadonlyMap<string, readonly (string | null)[]>;

/** The keepers of the varieties that are touched. */
async function keepersOf(tx: Transaction, written: readonly Written[]): Promise<Keepers> {
  const ids = new Set<string>();
  for (const { table, before, after } of written)
    for (const row of [before, after])
      for (const [column, to] of Object.entries(ownership[table].through ?? {}))
        if (to === "Variety" && typeof row?.[column] === "string") ids.add(row[column]);
  if (ids.size === 0) return new Map();
  const where = { varietyId: { in: [...ids] } };
  const lots = await tx.lot.findMany({
    where,
    select: { varietyId: true, holderId: true },
    distinct: ["varietyId", "holderId"],
  });
  const ofStewards = { where, select: { varietyId: true, stewardId: true } } as const;
  const growOuts = await tx.growOut.findMany({ ...ofStewards, distinct: ["varietyId", "stewardId"] });
  const strains = await tx.strain.findMany({ ...ofStewards, distinct: ["varietyId", "stewardId"] });
  const hands = [
    ...lots.map(({ varietyId, holderId }) => ({ varietyId, hand: holderId })),
    ...[...growOuts, ...strains].map(({ varietyId, stewardId }) => ({ varietyId, hand: stewardId })),
  ];
  const of = grouped(hands, ({ varietyId }) => varietyId);
  return new Map([...ids].map((id) => [id, (of.get(id) ?? []).map(({ hand }) => hand)]));
}

/** The steward whose a row is, the first that is named on the way. */
function handOf(rows: RowsAtHand, table: TableName, row: Row): string | null {
  const { hands = [], through = {} } = ownership[table];
  for (const column of hands) if (typeof row[column] === "string") return row[column];
  for (const [column, to] of Object.entries(through)) {
    const next = typeof row[column] === "string" && to !== table ? rows.get(to, row[column]) : null;
    const hand = next && handOf(rows, to, next);
    if (hand) return hand;
  }
  return null;
}

async function whoMay(tx: Transaction, hand: string | null): Promise<string> {
  const person = hand && (await tx.person.findUnique({ where: { stewardId: hand }, select: { name: true } }));
  return person ? `${person.name} or the owner may` : "the owner may, or the steward whose it is";
}

class Ground {
  /** lots that this change set parts off from the actor's own, whoever holds them then */
  private readonly partedOff: ReadonlySet<string>;
  /** stewards to whom seed goes in this change set, and the lots that it becomes by a transfer */
  private readonly reached = new Set<string>();

  constructor(
    private readonly actor: Actor,
    private readonly rows: RowsAtHand,
    private readonly written: readonly Written[],
    private readonly keepers: Keepers,
  ) {
    for (const { table, before, after } of written) {
      const row = after ?? before;
      if (table !== "Transfer" || !row || !this.ownTransfer(row)) continue;
      for (const id of [row.toStewardId, row.newLotId]) if (typeof id === "string") this.reached.add(id);
    }
    this.partedOff = this.lotsPartedOff();
    for (const id of this.partedOff) {
      const holder = rows.get("Lot", id)?.holderId;
      if (typeof holder === "string") this.reached.add(holder);
    }
  }

  mayWrite(written: Written): boolean {
    const { table, how, before, after } = written;
    const rule = ownership[table];
    if (rule.registry) return false;
    const { role } = this.actor;
    if (role === "librarian") {
      if (rule.desk === undefined || (rule.desk === "adds" && how !== "added")) return false;
      // Who borrows and who gave is written at the desk.
      if (table === "Steward" || table === "Person" || rule.desk === "adds") return true;
    } else if (role === "helper") {
      if (!this.mayWriteInField(written)) return false;
    } else if (role !== "steward") return false;
    if (rule.anybodyWrites || (rule.anybodyAdds && how === "added")) return true;
    if (this.passesOn(written)) return true;
    return [before, after].every((row) => row === null || this.isOwn(table, row));
  }

  private mayWriteInField({ table, before, after }: Written): boolean {
    const { field } = ownership[table];
    if (field === "writes") return true;
    if (field === undefined || before === null || after === null) return false;
    return Object.keys(after).every((column) => field.includes(column) || after[column] === before[column]);
  }

  /** Seed that this change set puts into another's hand, and what is written with it there. */
  private passesOn({ table, how, before, after }: Written): boolean {
    const row = after ?? before;
    if (!row || how === "changed") return false;
    const at = table === "Lot" ? row.id : row.lotId;
    if (typeof at === "string" && (this.partedOff.has(at) || (this.actor.role === "librarian" && this.reached.has(at))))
      return table === "Lot" || ownership[table].through?.lotId === "Lot";
    if (table === "LedgerEntry" && typeof row.transferId === "string") {
      const transfer = this.rows.get("Transfer", row.transferId);
      return transfer !== null && this.ownTransfer(transfer);
    }
    return table === "Place" && typeof row.stewardId === "string" && this.reached.has(row.stewardId);
  }

  /** The giver writes a hand-over; at a library's desk both ways. */
  private ownTransfer(row: Row): boolean {
    if (this.isOwnHand(row.fromStewardId)) return true;
    return this.actor.role === "librarian" && this.isOwnHand(row.toStewardId);
  }

  private lotsPartedOff(): ReadonlySet<string> {
    const parents = new Map<string, boolean>();
    const made = new Set(
      this.written.flatMap(({ table, how, id }) => (table === "Lot" && how !== "changed" ? [id] : [])),
    );
    for (const { table, how, before, after } of this.written) {
      const row = after ?? before;
      if (table !== "LotParent" || how === "changed" || !row || !made.has(String(row.lotId))) continue;
      const own = this.isOwn("Lot", this.rows.get("Lot", String(row.parentLotId)) ?? {});
      parents.set(String(row.lotId), own && (parents.get(String(row.lotId)) ?? true));
    }
    return new Set([...parents].flatMap(([lotId, own]) => (own ? [lotId] : [])));
  }

  private isOwn(table: TableName, row: Row): boolean {
    if (this.actor.role === "helper" && table === "GrowOut") return this.actor.growOutIds.includes(String(row.id));
    const { hands = [], through = {}, any } = ownership[table];
    const answers = [
      ...hands.map((column) =>
        row[column] === null || row[column] === undefined ? null : this.isOwnHand(row[column]),
      ),
      ...Object.entries(through).map(([column, to]) => this.isOwnLink(to, row[column])),
    ].filter((answer) => answer !== null);
    // Librarians of the whole circle write for hands that nobody has written.
    if (answers.length === 0) return this.everyDesk;
    return any ? answers.some(Boolean) : answers.every(Boolean);
  }

  private isOwnLink(table: TableName, id: unknown): boolean | null {
    if (typeof id !== "string") return null;
    const row = this.rows.get(table, id);
    // One that is hidden shows no keepers either, and is not for that kept by nobody.
    if (row === null) return false;
    if (table === "Variety") return this.actor.role !== "helper" && this.keeps(id);
    return this.isOwn(table, row);
  }

  /** Whether the actor keeps a variety, or nobody does. */
  private keeps(varietyId: string): boolean {
    const hands = this.keepers.get(varietyId);
    return hands !== undefined && (hands.length === 0 || hands.some((hand) => this.isOwnHand(hand)));
  }

  private get everyDesk(): boolean {
    return this.actor.role === "librarian" && this.actor.stewardId === null;
  }

  private isOwnHand(hand: unknown): boolean {
    if (this.everyDesk) return true;
    return this.actor.role !== "helper" && hand !== null && hand === this.actor.stewardId;
  }
}
