import type { Database } from "@/lib/db";
import { readTogether, type Selection, sql } from "@/lib/db";
import type { TraitDefinition } from "@/lib/schemas/traits/trait";
import type { TraitScope } from "@/lib/schemas/traits/trait-form";
import type { RowOf } from "../change-set/records";
import { definitionOf, scopeOf } from "./trait-row";

type TraitRow = RowOf<"Trait">;

/** A version of a trait. */
export interface TraitVersion extends TraitDefinition {
  readonly id: string;
  readonly version: number;
}

/** A trait with all its versions; it is known by the first. */
export interface TraitLine {
  /** the id of its first version */
  readonly id: string;
  readonly scope: TraitScope;
  readonly newest: TraitVersion;
  /** the oldest first */
  readonly versions: readonly TraitVersion[];
}

const traitColumns: Selection<TraitRow>["columns"] = {
  id: "text",
  name: "text",
  nameKey: "text",
  varietyId: "text",
  cropId: "text",
  kind: "text",
  unit: "text",
  version: "number",
  direction: "text",
  target: "number",
  scaleLow: "number",
  scaleHigh: "number",
  wording: "text",
  previousId: "text",
};

/** The traits that a variety's plants may be scored by: its own, its crop's and those that all share. */
export function traitsOfVariety(varietyId: string): Selection<TraitRow> {
  return {
    columns: traitColumns,
    rows: sql`SELECT t.* FROM "Trait" t JOIN "Variety" v ON v."id" = ${varietyId}
      WHERE t."varietyId" = v."id" OR (t."varietyId" IS NULL AND (t."cropId" IS NULL OR t."cropId" = v."cropId")) ORDER BY t."id"`,
  };
}

/** The same for a grow-out's variety, with whatever else its plants were scored by. */
export function traitsOfGrowOut(growOutId: string): Selection<TraitRow> {
  return {
    columns: traitColumns,
    rows: sql`SELECT t.* FROM "Trait" t JOIN "GrowOut" g ON g."id" = ${growOutId} JOIN "Variety" v ON v."id" = g."varietyId"
      WHERE t."varietyId" = v."id" OR (t."varietyId" IS NULL AND (t."cropId" IS NULL OR t."cropId" = v."cropId"))
        OR t."id" IN (SELECT s."traitId" FROM "Score" s JOIN "Plant" p ON p."id" = s."plantId" WHERE p."growOutId" = g."id")
      ORDER BY t."id"`,
  };
}

/** Versions gathered into traits: the variety's own first, then the crop's, then the shared, each in the order of entry. */
export function traitLines(rows: readonly TraitRow[]): TraitLine[] {
  const next = new Map(rows.flatMap((row) => (row.previousId === null ? [] : [[row.previousId, row] as const])));
  const known = new Set(rows.map((row) => row.id));
  const lines = rows
    .filter((row) => row.previousId === null || !known.has(row.previousId))
    .map((first): TraitLine => {
      const versions: TraitVersion[] = [];
      for (let row: TraitRow | undefined = first; row; row = next.get(row.id))
        versions.push({ ...definitionOf(row), id: row.id, version: row.version });
      return { id: first.id, scope: scopeOf(first), newest: versions.at(-1) as TraitVersion, versions };
    });
  const order: readonly TraitScope[] = ["variety", "crop", "all"];
  return order.flatMap((scope) => lines.filter((line) => line.scope === scope));
}

/** A trait as a variety's page lists it. */
export interface ListedTrait extends TraitLine {
  /** standing scores of this variety's plants, by version */
  readonly scores: ReadonlyMap<string, number>;
  /** standing scores of any variety's plants */
  readonly scoresInAll: number;
}

interface Count {
  readonly traitId: string;
  readonly own: number;
  readonly every: number;
}

/** The traits of a variety with how often each was scored. One statement. */
export async function listTraits(db: Database, varietyId: string): Promise<ListedTrait[]> {
  const counts: Selection<Count> = {
    columns: { traitId: "text", own: "number", every: "number" },
    rows: sql`SELECT s."traitId", SUM(CASE WHEN g."varietyId" = ${varietyId} THEN 1 ELSE 0 END) AS "own", COUNT(*) AS "every"
      FROM "Score" s JOIN "Plant" p ON p."id" = s."plantId" JOIN "GrowOut" g ON g."id" = p."growOutId"
      WHERE NOT s."takenBack" AND NOT EXISTS (SELECT 1 FROM "Score" n WHERE n."replacesId" = s."id")
      GROUP BY s."traitId"`,
  };
  const read = await readTogether(db, { traits: traitsOfVariety(varietyId), counts });
  const byTrait = new Map(read.counts.map((count) => [count.traitId, count]));
  return traitLines(read.traits).map((line) => ({
    ...line,
    scores: new Map(line.versions.map((version) => [version.id, byTrait.get(version.id)?.own ?? 0])),
    scoresInAll: line.versions.reduce((sum, version) => sum + (byTrait.get(version.id)?.every ?? 0), 0),
  }));
}
