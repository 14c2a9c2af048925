import { type Selection, sql } from "@/lib/db";

/** Another record of a lot, which this one leads. */
export interface OtherRecord {
  readonly id: string;
  readonly number: string;
  readonly code: string;
}

/** The records that a lot leads, in the order of entry. */
export function otherRecordsOf(leadingId: string): Selection<OtherRecord> {
  return {
    columns: { id: "text", number: "text", code: "text" },
    rows: sql`
      SELECT o."id", o."number", o."code" FROM "Lot" l JOIN "Lot" o ON o."varietyId" = l."varietyId" AND o."sameAsId" = l."id"
      WHERE l."id" = ${leadingId} ORDER BY o."id"`,
  };
}
