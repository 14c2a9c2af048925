import type { Client, Database } from "@/lib/db";

/** A transfer that seed coming in answers, as the form shows it. */
export interface AnsweredShown {
  readonly id: string;
  readonly kind: string;
  readonly on: string;
  readonly number: string;
  readonly variety: string;
  readonly holder: string | null;
  readonly to: string | null;
  readonly toWords: string | null;
  /** promises that were not kept yet */
  readonly promised: readonly string[];
}

/** Names that taking seed in offers, and what is known of it before anything is typed. */
export interface TakingInRead {
  readonly answered: AnsweredShown | null;
  readonly varieties: readonly string[];
  readonly stewards: readonly string[];
  readonly start: {
    readonly variety: string;
    readonly holder: string;
    readonly giver: string;
    readonly giverWords: string;
    readonly answers: string;
  };
}

/**
 * Reads what taking seed in begins with: a transfer that it `answers` (a loan that comes back), one that it is the other half of (`exchange`),
 * or a `variety` by its id. Three or four statements.
 */
export async function readTakingIn(
  db: Database,
  asked: { readonly answers: string | null; readonly exchange: string | null; readonly variety: string | null },
): Promise<TakingInRead> {
  const varieties = await db.read.variety.findMany({ select: { id: true, name: true }, orderBy: { nameKey: "asc" } });
  const people = await db.read.person.findMany({ select: { name: true }, orderBy: { nameKey: "asc" } });
  const answered = asked.answers === null ? null : await readAnswered(db.read, asked.answers);
  const other = asked.exchange === null ? null : await readAnswered(db.read, asked.exchange);
  const hands = answered ?? other;
  return {
    answered,
    varieties: varieties.map((variety) => variety.name),
    stewards: people.map((person) => person.name),
    start: {
      variety: answered?.variety ?? varieties.find((variety) => variety.id === asked.variety)?.name ?? "",
      holder: hands?.holder ?? "",
      giver: hands?.to ?? "",
      giverWords: hands?.toWords ?? "",
      answers: answered?.id ?? "",
    },
  };
}

interface AnsweredSql extends Omit<AnsweredShown, "promised"> {
  readonly words: string | null;
}

/** One row a promise that was not kept yet. */
async function readAnswered(db: Client, id: string): Promise<AnsweredShown | null> {
  const rows = await db.$queryRaw<AnsweredSql[]>`
    SELECT t."id", t."kind", t."on", l."number", v."name" AS "variety", h."name" AS "holder", o."name" AS "to", t."toWords", p."words"
    FROM "Transfer" t JOIN "Lot" l ON l."id" = t."lotId" JOIN "Variety" v ON v."id" = l."varietyId"
      LEFT JOIN "Person" h ON h."stewardId" = t."fromStewardId" LEFT JOIN "Person" o ON o."stewardId" = t."toStewardId"
      LEFT JOIN "Promise" p ON p."transferId" = t."id" AND p."keptOn" IS NULL
    WHERE t."id" = ${id} ORDER BY p."id"`;
  const [row] = rows;
  if (!row) return null;
  const { words: _words, ...shown } = row;
  return { ...shown, promised: rows.flatMap((each) => each.words ?? []) };
}
