import { stat } from "node:fs/promises";
import path from "node:path";
import { type Database, readRows, type Selection, type Sql, sql } from "@/lib/db";
import { compareCodePoints } from "@/lib/science/code-point-order";
import { recordsOfLot } from "../lots/same-lot";
import { folderOfPhotos, pathOfPhoto } from "./photo-place";
import type { PhotoSubject } from "./photo-subject";

interface PhotoRow {
  readonly id: string;
  readonly hash: string;
  readonly caption: string | null;
  readonly takenOn: string | null;
  readonly scale: string | null;
  readonly width: number;
  readonly height: number;
  readonly bytes: number;
  readonly takenBy: string | null;
  readonly plant: string | null;
}

/** A picture as its record's page shows it. */
export interface PhotoRead extends PhotoRow {
  /** false: its file is gone, or is not as long as what was stored */
  readonly there: boolean;
}

/** A variety with its lots, grow-outs and tests. */
interface WholeLife {
  readonly kind: "life";
  readonly id: string;
}

/** The pictures of a record, the oldest first, those of no known day last; those of a trait by what they show of its scale. One statement. */
export async function readPhotosOf(db: Database, subject: PhotoSubject | WholeLife): Promise<PhotoRead[]> {
  const rows = await readRows(db, photosWhere(ofSubject(subject)));
  const whenTaken = ({ takenOn }: PhotoRow) => takenOn ?? "\uffff";
  const step = ({ scale }: PhotoRow) => (subject.kind === "trait" ? (scale ?? "\uffff") : "");
  rows.sort(
    (left, right) =>
      compareCodePoints(step(left), step(right)) ||
      compareCodePoints(whenTaken(left), whenTaken(right)) ||
      compareCodePoints(left.id, right.id),
  );
  return Promise.all(rows.map(async (row) => ({ ...row, there: await fileIsThere(db, row) })));
}

function photosWhere(which: Sql): Selection<PhotoRow> {
  return {
    columns: {
      ...{ id: "text", hash: "text", caption: "text", takenOn: "text", scale: "text" },
      ...{ width: "number", height: "number", bytes: "number", takenBy: "text", plant: "text" },
    },
    rows: sql`SELECT f."id", f."hash", f."caption", f."takenOn", f."scale", f."width", f."height", f."bytes",
      n."name" AS "takenBy", k."name" AS "plant"
      FROM "Photo" f LEFT JOIN "Person" n ON n."stewardId" = f."stewardId" LEFT JOIN "Plant" k ON k."id" = f."plantId"
      WHERE ${which}`,
  };
}

/** A trait has the pictures of all its versions; a variety not those of its traits. */
function ofSubject({ kind, id }: PhotoSubject | WholeLife): Sql {
  switch (kind) {
    case "life":
      return sql`f."traitId" IS NULL AND (f."varietyId" = ${id}
        OR f."lotId" IN (SELECT l."id" FROM "Lot" l WHERE l."varietyId" = ${id})
        OR f."growOutId" IN (SELECT g."id" FROM "GrowOut" g WHERE g."varietyId" = ${id})
        OR f."testId" IN (SELECT t."id" FROM "GerminationTest" t JOIN "Lot" m ON m."id" = t."lotId" WHERE m."varietyId" = ${id}))`;
    case "variety":
      return sql`f."varietyId" = ${id} AND f."traitId" IS NULL`;
    case "lot":
      return sql`f."lotId" IN ${recordsOfLot(id)}`;
    case "grow-out":
      return sql`f."growOutId" = ${id}`;
    case "test":
      return sql`f."testId" = ${id}`;
    case "trait":
      return sql`f."growOutId" IS NULL AND f."traitId" IN (
        WITH RECURSIVE v("id", "previousId") AS (
          SELECT t."id", t."previousId" FROM "Trait" t WHERE t."id" = ${id}
          UNION SELECT t."id", t."previousId" FROM "Trait" t JOIN v ON t."id" = v."previousId"
        ) SELECT v."id" FROM v)`;
  }
}

/** Whether a picture's file lies in its place, as long as it was stored. What rotted within is told by `npm run verify`. */
async function fileIsThere(
  { location }: Pick<Database, "location">,
  { hash, bytes }: Pick<PhotoRow, "hash" | "bytes">,
): Promise<boolean> {
  return stat(path.join(folderOfPhotos(location), pathOfPhoto(hash))).then(
    (found) => found.isFile() && found.size === bytes,
    () => false,
  );
}
