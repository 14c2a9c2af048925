import type { Actor } from "@/lib/access/actor";
import { permissions, roleMay } from "@/lib/access/permissions";
import { routes } from "@/lib/access/routes";
import type { Database } from "@/lib/db";
import { nameOfRecord, nounOf } from "../change-set/name-of-record";
import { delegateOf, type TableName } from "../change-set/records";
import { type Intended, mayWrite, whoMayWrite } from "./check-ownership";
import type { Row } from "./rows-at-hand";

/** The pages of records that are somebody's, and what is written from there. */
export type RecordPage = keyof typeof pages;

/** What is asked of the table of owners for some of a page's ways and deeds; they are offered where it is granted. */
interface Asked {
  readonly intended: (record: Row) => Intended;
  /** addresses under the page's own, or beside it where they lead on with its record */
  readonly ways: (route: string) => boolean;
  readonly deeds: (deed: string) => boolean;
}

const isPicture = (name: string) => name === "picture";
const notPicture = (name: string) => name !== "picture";

/** The record itself is written of: what stands under its page, and `beside` it. */
function ofRecord(table: TableName, page: string, ...beside: string[]): Asked {
  return {
    intended: (row) => ({ table, how: "changed", row }),
    ways: (route) => (route.startsWith(`${page}/`) || beside.includes(route)) && route !== added,
    deeds: notPicture,
  };
}

/** The page itself may be looked at, and what is done on it is not offered. */
function onItself(table: TableName): Asked {
  return { intended: (row) => ({ table, how: "changed", row }), ways: () => false, deeds: notPicture };
}

/** A picture is put to it. */
function pictureOf(column: string): Asked {
  return {
    intended: (row) => ({ table: "Photo", how: "added", row: { [column]: row.id } }),
    ways: (route) => route === "/pictures/new",
    deeds: isPicture,
  };
}

/** What is added to a variety: one's own strain and one's word as a holder anybody may, the rest who keeps it. */
const added = "/varieties/[id]/add/[what]";
const addedByKeepers = ["name", "same", "trait", "story"].map((what) => added.replace("[what]", what));

/** A hand-over is put right in the giver's ledger as well. */
const handOver: Asked = {
  intended: (row) => ({ table: "LedgerEntry", how: "added", row: { lotId: row.lotId, transferId: row.id } }),
  ways: (route) => route === "/sharing/[id]/correct",
  deeds: () => false,
};

const pages = {
  "/lots/[id]": {
    table: "Lot",
    asked: [ofRecord("Lot", "/lots/[id]", "/tests/new", "/lots/blend"), pictureOf("lotId")],
  },
  "/grow-outs/[id]": { table: "GrowOut", asked: [ofRecord("GrowOut", "/grow-outs/[id]"), pictureOf("growOutId")] },
  "/varieties/[id]": {
    table: "Variety",
    asked: [ofRecord("Variety", "/varieties/[id]", "/lots/blend"), pictureOf("varietyId")],
  },
  "/tests/[id]": {
    table: "GerminationTest",
    asked: [ofRecord("GerminationTest", "/tests/[id]", "/tests/new"), pictureOf("testId")],
  },
  "/sharing/[id]": { table: "Transfer", asked: [ofRecord("Transfer", "/sharing/[id]", "/sharing/take-in"), handOver] },
  "/pictures/[id]": {
    table: "Photo",
    asked: [{ ...ofRecord("Photo", "/pictures/[id]"), deeds: isPicture }],
  },
  "/stewards/[id]": { table: "Steward", asked: [ofRecord("Steward", "/stewards/[id]")] },
  "/field/came-home/[record]": { table: "FieldRecord", asked: [onItself("FieldRecord")] },
  "/field/same-plant/[question]": { table: "Question", asked: [onItself("Question")] },
} as const satisfies Readonly<Record<string, { readonly table: TableName; readonly asked: readonly Asked[] }>>;

/** What is not offered, by whose the records are; as `closedTo` says it by the role. */
export interface ClosedHere {
  readonly deeds: readonly string[];
  readonly named: readonly { readonly addresses: readonly string[]; readonly ids: readonly string[] }[];
}

/** The same on a record's page, with whose the record is. */
export interface ClosedOfRecord extends ClosedHere {
  /** the record by noun and name, and who may write of it */
  readonly record: string;
  readonly whoMay: string;
}

/**
 * What is not offered on the page of a record because of whose it is: of the ways and deeds there that a reader has not either, those that the one
 * table of owners would refuse. Null where everything of the role is offered. The owner is asked nothing.
 */
export async function closedHere(
  db: Database,
  actor: Actor,
  page: RecordPage,
  id: string,
): Promise<ClosedOfRecord | null> {
  if (asksNothing(actor)) return null;
  const [row] = await delegateOf(db.read, pages[page].table).findMany({ where: { id: { in: [id] } } });
  if (row === undefined) return null;
  const { named, deeds } = await closedOf(db, actor, [
    { page, records: [row], beside: false },
    ...(page === "/varieties/[id]" ? await seedOfVariety(db, id) : []),
  ]);
  if (named.length + deeds.length === 0) return null;
  const { table } = pages[page];
  const record = `${nounOf(table)} ${await nameOfRecord(db.read, table, row)}`;
  return { deeds, named, record, whoMay: await whoMayWrite(db.read, table, row) };
}

/** The owner may write all, and a reader nothing that is not closed to the role. */
function asksNothing({ role }: Actor): boolean {
  return role === "owner" || role === "reader" || role === "public";
}

/** As closedHere, for a list that leads to what is done with each of these lots. */
export async function closedOfLots(db: Database, actor: Actor, ids: readonly string[]): Promise<ClosedHere | null> {
  if (asksNothing(actor) || ids.length === 0) return null;
  const records = await delegateOf(db.read, "Lot").findMany({ where: { id: { in: [...ids] } } });
  const { named } = await closedOf(db, actor, [{ page: "/lots/[id]", records, beside: true }]);
  return named.length > 0 ? { named, deeds: [] } : null;
}

interface RecordsOfPage {
  readonly page: RecordPage;
  readonly records: readonly Row[];
  /** they stand on another page, which leads to what is done with them and no further */
  readonly beside: boolean;
}

async function closedOf(db: Database, actor: Actor, all: readonly RecordsOfPage[]): Promise<ClosedHere> {
  const each = all.flatMap(({ page, records, beside }) =>
    pages[page].asked.slice(0, beside ? 1 : undefined).map((asked) => ({ page, records, beside, asked })),
  );
  const intended = each.flatMap(({ records, asked }) => records.map(asked.intended));
  const granted = (await mayWrite(db.read, actor, intended)).values();
  const named: { addresses: string[]; ids: string[] }[] = [];
  const deeds = new Set<string>();
  for (const { page, records, beside, asked } of each) {
    // From a test it goes on to another of the same lot.
    const ids = records.flatMap(({ id, lotId }) => (granted.next().value ? [] : [id, lotId]));
    if (ids.length === 0) continue;
    const more = page === "/varieties/[id]" && asked.deeds !== isPicture ? addedByKeepers : [];
    named.push({
      addresses: [...writing.filter(asked.ways), ...more],
      ids: ids.filter((id) => typeof id === "string"),
    });
    if (!beside) for (const deed of writingDeeds.filter(asked.deeds)) deeds.add(deed);
  }
  return { named, deeds: [...deeds] };
}

/** The page of a variety leads to what is done with each of its lots and grow-outs, which have owners of their own. */
async function seedOfVariety(db: Database, varietyId: string): Promise<RecordsOfPage[]> {
  const lots = await db.read.lot.findMany({ where: { varietyId } });
  const growOuts = await db.read.growOut.findMany({ where: { varietyId } });
  return [
    { page: "/lots/[id]", records: lots, beside: true },
    { page: "/grow-outs/[id]", records: growOuts, beside: true },
  ];
}

const looked = ["history", "undo"];
const writing = Object.entries(routes).flatMap(([route, action]) =>
  roleMay("reader", action) || looked.includes(action) ? [] : [route],
);
const writingDeeds = Object.keys(permissions).filter(
  (action) => !roleMay("reader", action as keyof typeof permissions) && !looked.includes(action),
);

/** Every page of a record that asks so. */
export const pagesOfRecords = Object.keys(pages) as RecordPage[];
