import { type Selection, sql } from "@/lib/db";

/** How two founder lots are related, with their numbers. */
export interface KinshipRead {
  readonly id: string;
  readonly firstId: string;
  readonly first: string;
  readonly secondId: string;
  readonly second: string;
  readonly kind: string;
  readonly coancestry: number | null;
  readonly how: string;
}

/** What is recorded of the kinship of a variety's founder lots, to one another and to those of another variety, in the order of entry. */
export function kinshipsOfVariety(varietyId: string): Selection<KinshipRead> {
  return {
    columns: {
      id: "text",
      firstId: "text",
      first: "text",
      secondId: "text",
      second: "text",
      kind: "text",
      coancestry: "number",
      how: "text",
    },
    rows: sql`
      SELECT k."id", l."id" AS "firstId", l."number" AS "first", o."id" AS "secondId", o."number" AS "second", k."kind", k."coancestry", k."how"
      FROM "FounderKinship" k JOIN "Lot" m ON m."id" = k."firstId" JOIN "Lot" l ON l."id" = COALESCE(m."sameAsId", m."id")
        JOIN "Lot" n ON n."id" = k."secondId" JOIN "Lot" o ON o."id" = COALESCE(n."sameAsId", n."id")
      WHERE l."varietyId" = ${varietyId} OR o."varietyId" = ${varietyId} ORDER BY k."id"`,
  };
}

/** Pairs of founder lots of one variety of which nothing is recorded, in the order of the lots. */
export function pairsNotKnown<Lot extends { readonly id: string }>(
  founders: readonly Lot[],
  kinships: readonly KinshipRead[],
): (readonly [Lot, Lot])[] {
  const known = new Set(
    kinships.flatMap(({ firstId, secondId }) => [`${firstId} ${secondId}`, `${secondId} ${firstId}`]),
  );
  return founders.flatMap((one, place) =>
    founders.slice(place + 1).flatMap((other) => (known.has(`${one.id} ${other.id}`) ? [] : [[one, other] as const])),
  );
}
