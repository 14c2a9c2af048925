import { type Selection, sql } from "@/lib/db";
import type { StoredPromise, StoredTransfer } from "./records";

/** All transfers in the order of entry, without what was told and noted. */
export const transfersStored: Selection<StoredTransfer> = {
  columns: {
    id: "text",
    kind: "text",
    varietyId: "text",
    lotId: "text",
    newLotId: "text",
    fromStewardId: "text",
    toStewardId: "text",
    toWords: "text",
    on: "text",
    onFirst: "text",
    onLast: "text",
    amount: "number",
    unit: "text",
    grams: "number",
    replyDue: "text",
  },
  rows: sql`
    SELECT t."id", t."kind", l."varietyId", l."id" AS "lotId", COALESCE(n."sameAsId", n."id") AS "newLotId", t."fromStewardId", t."toStewardId", t."toWords", t."on", t."onFirst",
           t."onLast", t."amount", t."unit", t."replyDue",
           CASE WHEN t."unit" = 'g' THEN t."amount" WHEN t."unit" = 'seeds' THEN t."amount" * l."thousandSeedGrams" / 1000 END AS "grams"
    FROM "Transfer" t JOIN "Lot" m ON m."id" = t."lotId" JOIN "Lot" l ON l."id" = COALESCE(m."sameAsId", m."id")
      LEFT JOIN "Lot" n ON n."id" = t."newLotId" ORDER BY t."id"`,
};

/** All promises in the order of entry. */
export const promisesStored: Selection<StoredPromise> = {
  columns: {
    id: "text",
    transferId: "text",
    varietyId: "text",
    lotId: "text",
    stewardId: "text",
    words: "text",
    due: "text",
    keptOn: "text",
  },
  rows: sql`
    SELECT p."id", p."transferId", COALESCE(p."varietyId", l."varietyId") AS "varietyId",
      COALESCE(l."sameAsId", l."id") AS "lotId", p."stewardId", p."words", p."due", p."keptOn"
    FROM "Promise" p LEFT JOIN "Lot" l ON l."id" = p."lotId" ORDER BY p."id"`,
};
