import { type Database, placeholders } from "@/lib/db";
import { foldWords } from "./fold-words";
import type { IndexedRecord, IndexedText } from "./indexed-record";

/** A row of any of the statements below; what stands in `words`, `more` and `rest` differs by table. */
interface Row {
  readonly id: string;
  readonly title: string;
  readonly of: string | null;
  readonly words: string | null;
  readonly more: string | null;
  readonly rest: string | null;
  /** of a lot: the number of its own record, and where it came from */
  readonly other?: string | null;
  readonly origin?: string | null;
}

/** Reads the searchable records of a table, all or those with some ids. One statement a table. */
export type Reading = (db: Database, ids: readonly string[] | null) => Promise<IndexedRecord[]>;

function reading(sql: string, key: string, made: (row: Row) => IndexedRecord): Reading {
  return async (db, ids) => {
    if (ids === null) return (await db.read.$queryRawUnsafe<Row[]>(sql)).map(made);
    if (ids.length === 0) return [];
    const these = placeholders(db.engine, ids.length);
    const joint = / WHERE /.test(sql) ? "AND" : "WHERE";
    return (await db.read.$queryRawUnsafe<Row[]>(`${sql} ${joint} ${key} IN (${these})`, ...ids)).map(made);
  };
}

function text(words: string, slips: boolean, as: string | null = null): IndexedText {
  return { words, folded: foldWords(words), slips, as };
}

function note(words: string | null, as: string): IndexedText[] {
  return words === null || words === "" ? [] : [text(words, false, as)];
}

/** What is read of each table, by the table's name: a change of one row of it is read again by its id. */
export const readings: Readonly<Record<string, Reading>> = {
  Variety: reading(
    `SELECT v."id", v."name" AS "title", c."commonName" AS "of", v."story" AS "words", v."typeDescription" AS "more", v."note" AS "rest"
     FROM "Variety" v JOIN "Crop" c ON c."id" = v."cropId"`,
    'v."id"',
    (row) => ({
      kind: "variety",
      id: row.id,
      title: row.title,
      of: row.of,
      page: { kind: "variety", id: row.id },
      texts: [
        text(row.title, true),
        ...note(row.of, "crop"),
        ...note(row.words, "story"),
        ...note(row.more, "type description"),
        ...note(row.rest, "note"),
      ],
    }),
  ),
  VarietyName: reading(
    `SELECT n."id", v."name" AS "title", c."commonName" AS "of", COALESCE(o."name", n."name") AS "words", n."possiblySameAsId" AS "more", v."id" AS "rest"
     FROM "VarietyName" n JOIN "Variety" v ON v."id" = n."varietyId" JOIN "Crop" c ON c."id" = v."cropId"
     LEFT JOIN "Variety" o ON o."id" = n."possiblySameAsId"`,
    'n."id"',
    (row) => ({
      kind: "variety",
      id: row.id,
      title: row.title,
      of: row.of,
      page: { kind: "variety", id: row.rest ?? "" },
      texts: [text(row.words ?? "", true, row.more === null ? "another name" : "possibly the same as")],
    }),
  ),
  Lot: reading(
    `SELECT m."id", l."number" AS "title", v."name" AS "of", m."code" AS "words", m."notes" AS "more", l."id" AS "rest", m."number" AS "other",
       m."origin" AS "origin"
     FROM "Lot" m JOIN "Lot" l ON l."id" = COALESCE(m."sameAsId", m."id") JOIN "Variety" v ON v."id" = l."varietyId"`,
    'm."id"',
    (row) => ({
      kind: "lot",
      id: row.id,
      title: row.title,
      of: row.of,
      // Another record of a lot leads to the one that stands for both.
      page: { kind: "lot", id: row.rest ?? row.id },
      texts: [
        row.other === row.title ? text(row.title, true) : text(row.other ?? "", true, "its other record"),
        text(row.words ?? "", false, "label code"),
        ...note(row.more, "note"),
        ...note(row.origin ?? null, "where from"),
      ],
    }),
  ),
  GrowOut: reading(
    `SELECT g."id", g."name" AS "title", v."name" AS "of", g."note" AS "words", g."outcome" AS "more", NULL AS "rest"
     FROM "GrowOut" g JOIN "Variety" v ON v."id" = g."varietyId"`,
    'g."id"',
    (row) => ({
      kind: "grow-out",
      id: row.id,
      title: row.title,
      of: row.of,
      page: { kind: "grow-out", id: row.id },
      texts: [text(row.title, true), ...note(row.words, "note"), ...note(row.more, "outcome")],
    }),
  ),
  GerminationTest: reading(
    `SELECT t."id", t."name" AS "title", l."number" AS "of", t."note" AS "words", NULL AS "more", NULL AS "rest"
     FROM "GerminationTest" t JOIN "Lot" m ON m."id" = t."lotId" JOIN "Lot" l ON l."id" = COALESCE(m."sameAsId", m."id")`,
    't."id"',
    (row) => ({
      kind: "test",
      id: row.id,
      title: row.title,
      of: row.of,
      page: { kind: "test", id: row.id },
      texts: [text(row.title, true), ...note(row.words, "note")],
    }),
  ),
  Person: reading(
    `SELECT p."id", p."name" AS "title", s."place" AS "of", s."note" AS "words", NULL AS "more", p."stewardId" AS "rest"
     FROM "Person" p JOIN "Steward" s ON s."id" = p."stewardId"`,
    'p."id"',
    (row) => ({
      kind: "steward",
      id: row.id,
      title: row.title,
      of: row.of,
      page: { kind: "steward", id: row.rest ?? "" },
      texts: [text(row.title, true), ...note(row.of, "place"), ...note(row.words, "note")],
    }),
  ),
  Strain: reading(
    `SELECT s."id", s."name" AS "title", v."name" AS "of", s."difference" AS "words", s."note" AS "more", v."id" AS "rest"
     FROM "Strain" s JOIN "Variety" v ON v."id" = s."varietyId"`,
    's."id"',
    (row) => ({
      kind: "variety",
      id: row.id,
      title: row.of ?? "",
      of: null,
      page: { kind: "variety", id: row.rest ?? "" },
      texts: [text(row.title, true, "strain"), ...note(row.words, "strain"), ...note(row.more, "strain")],
    }),
  ),
  Story: reading(told("Story"), 'x."id"', (row) => ofSomething("story", row)),
  Observation: reading(told("Observation"), 'x."id"', (row) => ofSomething("note", row)),
  LedgerEntry: reading(
    `SELECT e."id", l."number" AS "title", e."on" AS "of", e."notes" AS "words", NULL AS "more", l."id" AS "rest"
     FROM "LedgerEntry" e JOIN "Lot" m ON m."id" = e."lotId" JOIN "Lot" l ON l."id" = COALESCE(m."sameAsId", m."id") WHERE e."notes" IS NOT NULL`,
    'e."id"',
    (row) => ({
      kind: "note",
      id: row.id,
      title: row.title,
      of: "ledger",
      page: { kind: "lot", id: row.rest ?? "" },
      texts: note(row.words, "note in the ledger"),
    }),
  ),
};

/** A story or observation with the record that it is about. */
function told(table: "Story" | "Observation"): string {
  return `SELECT x."id", COALESCE(l."number", g."name", v."name") AS "title",
    CASE WHEN x."lotId" IS NOT NULL THEN 'lot' WHEN x."growOutId" IS NOT NULL THEN 'grow-out' ELSE 'variety' END AS "of",
    x."words" AS "words", NULL AS "more", COALESCE(l."id", x."growOutId", x."varietyId") AS "rest"
    FROM "${table}" x LEFT JOIN "Lot" m ON m."id" = x."lotId" LEFT JOIN "Lot" l ON l."id" = COALESCE(m."sameAsId", m."id") LEFT JOIN "GrowOut" g ON g."id" = x."growOutId"
    LEFT JOIN "Variety" v ON v."id" = x."varietyId"`;
}

function ofSomething(kind: "story" | "note", row: Row): IndexedRecord {
  const page = row.of === "lot" || row.of === "grow-out" ? row.of : "variety";
  return {
    kind,
    id: row.id,
    title: row.title,
    of: row.of,
    page: { kind: page, id: row.rest ?? "" },
    texts: note(row.words, kind === "story" ? "story" : "observation"),
  };
}
