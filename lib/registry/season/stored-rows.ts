import type { Client, Database } from "@/lib/db";
import type { RowOf } from "../change-set/records";
import type { WordOfHolder } from "../varieties/holders";
import { readOpenMatters } from "./read-open-matters";
import { readOpenTests } from "./read-open-tests";
import { readVarieties } from "./read-varieties";
import type { OpenMatter, OpenTest, SeasonGrowOut, SeasonVariety } from "./records";

/** A lot with what its ledger says of itself. */
export interface LotRow {
  readonly id: string;
  readonly number: string;
  readonly varietyId: string;
  readonly holderId: string | null;
  readonly kind: string;
  readonly growOutId: string | null;
  readonly year: string | null;
  readonly yearFirst: string | null;
  readonly yearLast: string | null;
  readonly status: string | null;
  readonly statusReason: string | null;
  readonly founderLines: string | null;
  readonly entries: number | bigint;
  readonly lastEntry: string | null;
}

/** What the season is worked out from, as it is stored. */
export interface StoredRows {
  readonly varieties: ReadonlyMap<string, SeasonVariety>;
  readonly lots: readonly LotRow[];
  readonly containers: readonly { readonly lotId: string; readonly building: string }[];
  readonly people: readonly { readonly stewardId: string; readonly name: string }[];
  readonly growOuts: readonly SeasonGrowOut[];
  readonly otherNames: readonly RowOf<"VarietyName">[];
  readonly words: readonly (WordOfHolder & { readonly varietyId: string })[];
  readonly tests: readonly OpenTest[];
  readonly matters: readonly OpenMatter[];
}

// One statement for all lots with what their ledgers say of themselves; entries that were corrected or taken back do not count.
const lotsWithLedger = `
  SELECT l."id", l."number", l."varietyId", l."holderId", l."kind", l."growOutId", l."year", l."yearFirst", l."yearLast", l."status",
         l."statusReason", l."founderLines", COUNT(e."id") AS "entries", MAX(e."onFirst") AS "lastEntry"
  FROM "Lot" l
  LEFT JOIN "LedgerEntry" e ON e."lotId" = l."id" AND NOT e."takenBack"
    AND NOT EXISTS (SELECT 1 FROM "LedgerEntry" r WHERE r."replacesId" = e."id")
  GROUP BY l."id"`;

const containersWithBuildings = `
  SELECT c."lotId", COALESCE(p."building", p."id") AS "building" FROM "Container" c JOIN "Place" p ON p."id" = c."placeId"`;

interface Shelf {
  readonly revision: number;
  readonly rows: Promise<StoredRows>;
}

const shelves = new WeakMap<Client, Shelf>();

/** The stored rows, kept under the number of the last change: one statement where nothing changed since they were read, eleven more where it did. */
export async function storedRows(db: Database): Promise<StoredRows> {
  const { _max } = await db.read.changeSet.aggregate({ _max: { number: true } });
  const revision = _max.number ?? 0;
  const kept = shelves.get(db.read);
  if (kept?.revision === revision) return kept.rows;
  const rows = readRows(db);
  shelves.set(db.read, { revision, rows });
  rows.catch(() => shelves.delete(db.read));
  return rows;
}

async function readRows(db: Database): Promise<StoredRows> {
  const lots = await db.read.$queryRawUnsafe<LotRow[]>(lotsWithLedger);
  return {
    varieties: await readVarieties(db),
    lots: lots.sort((a, b) => (a.number < b.number ? -1 : 1)),
    containers: await db.read.$queryRawUnsafe<{ lotId: string; building: string }[]>(containersWithBuildings),
    people: await db.read.person.findMany({ select: { stewardId: true, name: true } }),
    growOuts: await db.read.growOut.findMany({
      select: {
        id: true,
        name: true,
        varietyId: true,
        sown: true,
        sownFirst: true,
        sownLast: true,
        stewardId: true,
        purpose: true,
        plantsStanding: true,
        seedParents: true,
        outcome: true,
      },
      orderBy: { id: "asc" },
    }),
    otherNames: await db.read.varietyName.findMany({ orderBy: { id: "asc" } }),
    words: await db.read.holderConfirmation.findMany({
      select: { id: true, varietyId: true, stewardId: true, lotId: true, on: true, onFirst: true, still: true },
    }),
    tests: await readOpenTests(db),
    matters: await readOpenMatters(db),
  };
}
