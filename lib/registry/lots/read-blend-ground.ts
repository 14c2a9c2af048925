import { type Database, readTogether, type Selection, sql } from "@/lib/db";
import { type GroundOfLots, groundOfLots } from "../figures/ground-of-lots";
import { figuresOfVariety, type LotFigures } from "../figures/read-figures";
import { readLineage } from "../figures/read-records";
import { mayHoldSeed } from "../varieties/holders";
import { type FounderLines, founderLinesOf } from "../varieties/lineage-standing";
import { type Objection, objectionsTo } from "./objections";

/** A lot of the variety that could go into a blend, with what is known of it. */
export interface BlendCandidate {
  readonly id: string;
  readonly number: string;
  readonly kind: string;
  readonly holder: string | null;
  readonly year: string | null;
  readonly strain: { readonly id: string; readonly name: string; readonly relation: string | null } | null;
  /** on hand; null not known */
  readonly grams: number | null;
  readonly thousandSeedGrams: number | null;
  readonly test: LotFigures["lastTest"];
  /** what stands against it, whatever it is mixed with */
  readonly objections: readonly Objection[];
  /** θ, F and all that follows are known */
  readonly lineageKnown: boolean;
  readonly foreignAncestry: number | null;
  readonly founders: readonly string[];
  readonly assumed: readonly string[];
}

/** All that a blend of one variety is weighed up with: the jars that hold seed, and how near they are kin. */
export interface BlendGround {
  readonly lots: readonly BlendCandidate[];
  /** in the order of the lots, where their lineage is followed; founders by lot number */
  readonly ground: GroundOfLots | null;
  readonly founderLines: FounderLines;
  /** lots that may hold seed and are left out because there are too many to compare */
  readonly leftOut: number;
}

/** Jars that are compared with each other at most: every pair of them is followed back. */
export const mostCompared = 80;

/**
 * Reads the lots of a variety that may hold seed, those asked for first, with the coancestry of every two. Three statements where the
 * figures of its crop are at hand.
 */
export async function readBlendGround(
  db: Database,
  { varietyId, cropId, asked }: { varietyId: string; cropId: string; asked: readonly string[] },
): Promise<BlendGround> {
  const figures = await figuresOfVariety(db, varietyId);
  const { lots, warnings } = await readTogether(db, selections(varietyId));
  const warned = new Map<string, string[]>();
  for (const { lotId, reason } of warnings) warned.set(lotId, [...(warned.get(lotId) ?? []), reason]);
  const wanted = new Set(asked);
  const held = lots
    .filter(
      (lot) => wanted.has(lot.id) || mayHoldSeed({ ...lot, gramsOnHand: figures.get(lot.id)?.gramsOnHand ?? null }),
    )
    .sort((a, b) => Number(wanted.has(b.id)) - Number(wanted.has(a.id)));
  const compared = held.slice(0, mostCompared);
  const records = await readLineage(db, [cropId]);
  const ground = groundOfLots(
    records,
    compared.map((lot) => lot.id),
  );
  return {
    lots: compared.map((lot) => candidateOf(lot, figures.get(lot.id), warned.get(lot.id) ?? [])),
    ground,
    founderLines: founderLinesOf(lots),
    leftOut: held.length - compared.length,
  };
}

interface LotSql {
  readonly id: string;
  readonly number: string;
  readonly kind: string;
  readonly origin: string | null;
  readonly holder: string | null;
  readonly year: string | null;
  readonly status: string | null;
  readonly statusReason: string | null;
  readonly treatment: string | null;
  readonly treatmentSubstance: string | null;
  readonly thousandSeedGrams: number | null;
  readonly founderLines: string | null;
  readonly strainId: string | null;
  readonly strain: string | null;
  readonly relation: string | null;
}

function selections(varietyId: string) {
  const lots: Selection<LotSql> = {
    columns: {
      id: "text",
      number: "text",
      kind: "text",
      origin: "text",
      holder: "text",
      year: "text",
      status: "text",
      statusReason: "text",
      treatment: "text",
      treatmentSubstance: "text",
      thousandSeedGrams: "number",
      founderLines: "text",
      strainId: "text",
      strain: "text",
      relation: "text",
    },
    rows: sql`
      SELECT l."id", l."number", l."kind", l."origin", p."name" AS "holder", l."year", l."status", l."statusReason", l."treatment",
        l."treatmentSubstance", l."thousandSeedGrams", l."founderLines", s."id" AS "strainId", s."name" AS "strain", s."relation"
      FROM "Lot" l LEFT JOIN "Person" p ON p."stewardId" = l."holderId" LEFT JOIN "Strain" s ON s."id" = l."strainId"
      WHERE l."varietyId" = ${varietyId} AND l."sameAsId" IS NULL ORDER BY COALESCE(l."yearFirst", '') DESC, l."id" DESC`,
  };
  const warnings: Selection<{ readonly lotId: string; readonly reason: string }> = {
    columns: { lotId: "text", reason: "text" },
    rows: sql`
      SELECT COALESCE(l."sameAsId", l."id") AS "lotId", w."reason" FROM "Warning" w JOIN "Lot" l ON l."id" = w."lotId"
      WHERE l."varietyId" = ${varietyId} AND w."closedOn" IS NULL ORDER BY w."id"`,
  };
  return { lots, warnings };
}

function candidateOf(lot: LotSql, figures: LotFigures | undefined, openWarnings: readonly string[]): BlendCandidate {
  const { id, number, kind, holder, year, thousandSeedGrams, strainId, strain, relation } = lot;
  const test = figures?.lastTest ?? null;
  return {
    ...{ id, number, kind, holder, year, thousandSeedGrams, test },
    strain: strainId === null || strain === null ? null : { id: strainId, name: strain, relation },
    grams: figures?.gramsOnHand ?? null,
    objections: objectionsTo("blend", { ...lot, tested: test !== null, openWarnings }),
    lineageKnown: figures?.coancestry != null,
    foreignAncestry: figures?.foreignAncestry ?? null,
    founders: figures?.founders ?? [],
    assumed: figures?.assumed ?? [],
  };
}
