import { type Database, readRows, type Selection, sql } from "@/lib/db";
import { leadingRecord, recordsOfLot } from "../lots/same-lot";

/** A claim about a lot, or one that names it, with the names it needs. */
export interface ClaimOfLot {
  readonly id: string;
  /** said of this lot, or of another that it is an ancestor of or the same as */
  readonly of: "this lot" | "another";
  readonly lotId: string;
  readonly lot: string;
  readonly kind: string;
  readonly parentLotId: string | null;
  readonly parent: string | null;
  readonly words: string;
  readonly teller: string | null;
  /** who wrote it down */
  readonly writtenBy: string | null;
  readonly toldOn: string | null;
  readonly howSure: string | null;
  readonly generationsFirst: number | null;
  readonly generationsLast: number | null;
  readonly story: string | null;
  readonly standing: string;
  readonly standingReason: string | null;
  /** the claim that it puts right */
  readonly replacesId: string | null;
}

/** All claims about a lot and those that name it, also those that were put right, in the order of entry. */
export function claimsOfLot(lotId: string): Selection<ClaimOfLot> {
  const [these, leads] = [recordsOfLot(lotId), leadingRecord(lotId)];
  return {
    columns: {
      id: "text",
      of: "text",
      lotId: "text",
      lot: "text",
      kind: "text",
      parentLotId: "text",
      parent: "text",
      words: "text",
      teller: "text",
      writtenBy: "text",
      toldOn: "text",
      howSure: "text",
      generationsFirst: "number",
      generationsLast: "number",
      story: "text",
      standing: "text",
      standingReason: "text",
      replacesId: "text",
    },
    rows: sql`
      SELECT c."id", CASE WHEN l."id" = ${leads} THEN 'this lot' ELSE 'another' END AS "of", l."id" AS "lotId", l."number" AS "lot", c."kind",
        o."id" AS "parentLotId", o."number" AS "parent", c."words", c."teller", p."name" AS "writtenBy", c."toldOn", c."howSure",
        c."generationsFirst", c."generationsLast", s."words" AS "story", c."standing", c."standingReason", c."replacesId"
      FROM "LineageClaim" c JOIN "Lot" m ON m."id" = c."lotId" JOIN "Lot" l ON l."id" = COALESCE(m."sameAsId", m."id")
        LEFT JOIN "Lot" n ON n."id" = c."parentLotId" LEFT JOIN "Lot" o ON o."id" = COALESCE(n."sameAsId", n."id")
        LEFT JOIN "Person" p ON p."stewardId" = c."stewardId" LEFT JOIN "Story" s ON s."id" = c."storyId"
      WHERE c."lotId" IN ${these} OR c."parentLotId" IN ${these} ORDER BY c."id"`,
  };
}

/** A claim that stands, with what was said in its place before, the latest first. */
export interface StandingClaim extends ClaimOfLot {
  readonly before: readonly ClaimOfLot[];
}

/** The claims that stand, each with those that it put right; those that are set aside come last. */
export function standingClaims(claims: readonly ClaimOfLot[]): StandingClaim[] {
  const byId = new Map(claims.map((claim) => [claim.id, claim]));
  const replaced = new Set(claims.map(({ replacesId }) => replacesId));
  const standing = claims
    .filter(({ id }) => !replaced.has(id))
    .map((claim) => ({ ...claim, before: earlier(claim, byId) }));
  const rank = (claim: ClaimOfLot) => ["believed", "open", "set aside"].indexOf(claim.standing);
  return standing.sort((a, b) => rank(a) - rank(b) || (a.id < b.id ? -1 : 1));
}

function earlier(claim: ClaimOfLot, byId: ReadonlyMap<string, ClaimOfLot>): ClaimOfLot[] {
  const before: ClaimOfLot[] = [];
  for (let at = byId.get(claim.replacesId ?? ""); at !== undefined; at = byId.get(at.replacesId ?? "")) before.push(at);
  return before;
}

/** The claims of a lot that stand, read. One statement. */
export async function readClaims(db: Database, lotId: string): Promise<StandingClaim[]> {
  return standingClaims(await readRows(db, claimsOfLot(lotId)));
}
