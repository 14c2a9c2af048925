import { notForThePublic, ownersTables, type SeenTable } from "./hidden-rows";
import { quoted } from "./private-columns";
import type { Viewer } from "./viewer";

/** Which rows of a table are hidden by themselves, not by what they hang on: a condition in SQL over its row x. */
export type HiddenByItself = Readonly<Partial<Record<SeenTable, string>>>;

/** For reading: varieties that are held back, borrowers, others' stores, promises, entries of the history and field records. */
export function hiddenForReading(viewer: Viewer): HiddenByItself {
  const { stewardId, growOutIds } = viewer;
  if (viewer.as === "public") {
    return {
      ...Object.fromEntries(notForThePublic.map((table) => [table, "1 = 1"])),
      Variety: `x."sensitivity" <> 'public'`,
      Story: `x."consent" IS NULL`,
    };
  }
  const isOwn = (column: string) => (stewardId === null ? "1 = 0" : `x."${column}" = ${quoted(stewardId)}`);
  const everyDesk = viewer.as === "librarian" && stewardId === null;
  const own = (column: string) => `(x."${column}" IS NOT NULL AND ${isOwn(column)})`;
  const ofOwn = (column: string, table: string, holder: string) =>
    stewardId === null
      ? "1 = 0"
      : `(x."${column}" IS NOT NULL AND x."${column}" IN
          (SELECT o."id" FROM WHOLE."${table}" o WHERE ${holder.replaceAll("?", quoted(stewardId))}))`;
  const named =
    growOutIds.length === 0
      ? "1 = 0"
      : `(x."growOutId" IS NOT NULL AND x."growOutId" IN (${growOutIds.map(quoted).join(", ")}))`;
  return {
    ...Object.fromEntries(ownersTables.map((table) => [table, "1 = 1"])),
    ...hiddenForWriting(viewer),
    Place: everyDesk ? "1 = 0" : `NOT ${own("stewardId")}`,
    Promise: everyDesk
      ? "1 = 0"
      : `NOT (${own("stewardId")} OR ${ofOwn("lotId", "Lot", `o."holderId" = ?`)}
          OR ${ofOwn("transferId", "Transfer", `o."fromStewardId" = ? OR o."toStewardId" = ?`)})`,
    ChangeSet: `NOT ${own("stewardId")}`,
    FieldRecord: `NOT (${own("stewardId")} OR ${named} OR ${ofOwn("growOutId", "GrowOut", `o."stewardId" = ?`)})`,
  };
}

/**
 * For an operation that reads before it writes: what is not there for the actor is not there for the operation either, so that no refusal names
 * it. Its rows are whole: what was and what is must be told truly.
 */
export function hiddenForWriting(viewer: Viewer): HiddenByItself {
  return {
    Variety: `x."id" IN (SELECT "id" FROM "held_back")`,
    Person: `x."stewardId" IN (SELECT "id" FROM "borrowers")`,
    HolderConfirmation: `x."stewardId" IN (SELECT "id" FROM "borrowers")`,
    ...(viewer.as === "public" ? { Person: "1 = 1" } : {}),
  };
}

/** The sets that the conditions ask for. */
export function basicSets(viewer: Viewer): { readonly name: string; readonly rows: string }[] {
  return [
    { name: "held_back", rows: heldBack(viewer) },
    { name: "borrowers", rows: borrowers(viewer) },
  ];
}

/**
 * Varieties that are held for a community that must be asked: seen by the owner, by a steward who keeps them (a lot, a grow-out, a strain, or who
 * entered them), and by a helper on whose grow-out they stand.
 */
function heldBack({ stewardId, growOutIds }: Viewer): string {
  const keeps = (table: string, holder: string) =>
    `EXISTS (SELECT 1 FROM WHOLE."${table}" k WHERE k."varietyId" = v."id" AND ${holder})`;
  const seen: string[] = [];
  if (stewardId !== null) {
    const is = `= ${quoted(stewardId)}`;
    seen.push(
      keeps("Lot", `k."holderId" ${is}`),
      keeps("GrowOut", `k."stewardId" ${is}`),
      keeps("Strain", `k."stewardId" ${is}`),
      `EXISTS (SELECT 1 FROM WHOLE."Change" c JOIN WHOLE."ChangeSet" s ON s."id" = c."changeSetId"
        WHERE c."recordId" = v."id" AND c."action" = 'create' AND s."stewardId" ${is} AND s."kind" = 'entry')`,
    );
  }
  if (growOutIds.length > 0) seen.push(keeps("GrowOut", `k."id" IN (${growOutIds.map(quoted).join(", ")})`));
  const unless = seen.length > 0 ? ` AND NOT (${seen.join(" OR ")})` : "";
  return `SELECT v."id" FROM WHOLE."Variety" v WHERE v."sensitivity" = 'held'${unless}`;
}

/**
 * Borrowers: who only got seed. Somebody is one who got seed by a transfer, and of whom nothing says that they keep seed for others: no kind
 * (grower, library, genebank), no grow-out, strain or plot, no account. Their names are seen by a librarian, by whoever gave them the seed, and by
 * themselves.
 */
function borrowers({ as, stewardId }: Viewer): string {
  if (as === "librarian" && stewardId === null) return `SELECT s."id" FROM WHOLE."Steward" s WHERE 1 = 0`;
  const none = (table: string) =>
    `NOT EXISTS (SELECT 1 FROM WHOLE."${table}" k WHERE k."stewardId" IS NOT NULL AND k."stewardId" = s."id")`;
  const known =
    stewardId === null
      ? ""
      : ` AND s."id" <> ${quoted(stewardId)} AND s."id" NOT IN (SELECT t."toStewardId" FROM WHOLE."Transfer" t
          WHERE t."toStewardId" IS NOT NULL AND t."fromStewardId" = ${quoted(stewardId)})`;
  return `SELECT s."id" FROM WHOLE."Steward" s WHERE s."kind" IS NULL
    AND s."id" IN (SELECT t."toStewardId" FROM WHOLE."Transfer" t WHERE t."toStewardId" IS NOT NULL)
    AND ${["GrowOut", "Strain", "Plot", "Member"].map(none).join(" AND ")}${known}`;
}
