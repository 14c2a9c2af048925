import type { Database } from "@/lib/db";
import { type LotListQuery, lotsOnPage } from "@/lib/schemas/lots/list-query";
import { compareCodePoints } from "@/lib/science/code-point-order";
import { allRows } from "./all-rows";
import { filterRows, type RenewalLines, seedOf } from "./filter-rows";
import { findRows, namedFirst } from "./find-rows";
import type { LotRow } from "./lot-row";
import { sortRows } from "./sort-rows";

/** One value that a filter can take, and how many lots have it. */
export interface FilterChoice {
  readonly value: string;
  readonly words: string;
  readonly lots: number;
}

export interface LotList {
  /** the lots of the asked page, in the asked order */
  readonly rows: readonly LotRow[];
  /** lots that pass search and filters */
  readonly found: number;
  /** lots of the registry */
  readonly all: number;
  readonly page: number;
  readonly pages: number;
  /** nothing was written just as searched: these are the nearest */
  readonly near: boolean;
  /** of the found: how many hold seed, hold none, or nobody knows */
  readonly seed: Readonly<Record<"some" | "none" | "unknown", number>>;
  /** of the found with seed or of unknown quantity: never tested, and below the line for renewing */
  readonly untested: number;
  readonly below: number;
  readonly choices: Readonly<
    Record<"variety" | "crop" | "holder" | "status" | "kind" | "place", readonly FilterChoice[]>
  >;
}

/** One page of the list of lots, as the address asks for it, with what stands in its filters. */
export async function listLots(db: Database, query: LotListQuery, lines: RenewalLines): Promise<LotList> {
  const all = await allRows(db);
  const { rows, near } = foundRows(all, query, lines);
  const pages = Math.max(1, Math.ceil(rows.length / lotsOnPage));
  const page = Math.min(query.page, pages);
  const seed = { some: 0, none: 0, unknown: 0 };
  for (const row of rows) seed[seedOf(row)] += 1;
  const mayHold = rows.filter((row) => seedOf(row) !== "none");
  return {
    rows: rows.slice((page - 1) * lotsOnPage, page * lotsOnPage),
    found: rows.length,
    all: all.length,
    page,
    pages,
    near,
    seed,
    untested: mayHold.filter((row) => row.lastTest === null).length,
    below: mayHold.filter((row) => row.lastTest !== null && row.lastTest.germination < lines.renewalPlan).length,
    choices: choicesOf(all),
  };
}

/** All lots that the query asks for, in its order: what an export writes. */
export async function lotsAskedFor(db: Database, query: LotListQuery, lines: RenewalLines): Promise<readonly LotRow[]> {
  return foundRows(await allRows(db), query, lines).rows;
}

function foundRows(all: readonly LotRow[], query: LotListQuery, lines: RenewalLines) {
  const { rows, near } = findRows(filterRows(all, query, lines), query.filter);
  const sorted = sortRows(rows, query.sort);
  return { rows: query.sort === null ? namedFirst(sorted, query.filter) : sorted, near };
}

// What stands in the filters follows from the rows alone, which are kept until something changes.
const choicesOfRows = new WeakMap<readonly LotRow[], LotList["choices"]>();

function choicesOf(rows: readonly LotRow[]): LotList["choices"] {
  const kept = choicesOfRows.get(rows) ?? counted(rows);
  choicesOfRows.set(rows, kept);
  return kept;
}

type Count = (value: string | null, words: string) => void;

function counted(rows: readonly LotRow[]): LotList["choices"] {
  return {
    variety: choices(rows, (row, count) => count(row.varietyId, row.variety)),
    crop: choices(rows, (row, count) => count(row.cropKey, row.crop)),
    holder: choices(rows, (row, count) => count(row.holderId, row.holder ?? "a steward")),
    status: choices(rows, (row, count) => count(row.status, row.status ?? "")),
    kind: choices(rows, (row, count) => count(row.kind, row.kind)),
    place: choices(rows, (row, count) => {
      for (const place of row.places) count(place, place);
    }),
  };
}

function choices(rows: readonly LotRow[], of: (row: LotRow, count: Count) => void): FilterChoice[] {
  const counts = new Map<string, { words: string; lots: number }>();
  const count: Count = (value, words) => {
    if (value === null) return;
    const choice = counts.get(value);
    if (choice) choice.lots += 1;
    else counts.set(value, { words, lots: 1 });
  };
  for (const row of rows) of(row, count);
  return [...counts]
    .map(([value, choice]) => ({ value, ...choice }))
    .sort((a, b) => compareCodePoints(a.words.toLowerCase(), b.words.toLowerCase()));
}
