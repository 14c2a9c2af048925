import { type Database, readTogether, type Selection, sql } from "@/lib/db";
import { keptUntilChange } from "../change-set/kept-until-change";
import type { RowOf } from "../change-set/records";
import type { WordOfHolder } from "../varieties/holders";
import { openMatters } from "./read-open-matters";
import { openTests } from "./read-open-tests";
import { scoredPlants } from "./read-scored-plants";
import { promisesStored, transfersStored } from "./read-transfers";
import { ownValuesOfCrops, seasonVarieties, varietiesWithCrops } from "./read-varieties";
import type {
  OpenMatter,
  OpenTest,
  SeasonGrowOut,
  SeasonScoredPlants,
  SeasonVariety,
  StoredPromise,
  StoredTransfer,
} from "./records";

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
  readonly donorNumber: string | null;
  readonly entries: number;
  readonly lastEntry: string | null;
}

/** What the season is worked out from, as it is stored. */
export interface StoredRows {
  readonly varieties: ReadonlyMap<string, SeasonVariety>;
  readonly lots: readonly LotRow[];
  readonly containers: readonly { readonly lotId: string; readonly building: string }[];
  readonly people: readonly { readonly stewardId: string; readonly name: string }[];
  readonly growOuts: readonly SeasonGrowOut[];
  readonly scoredPlants: readonly SeasonScoredPlants[];
  readonly otherNames: readonly RowOf<"VarietyName">[];
  readonly words: readonly (WordOfHolder & { readonly varietyId: string })[];
  readonly tests: readonly OpenTest[];
  readonly matters: readonly OpenMatter[];
  readonly transfers: readonly StoredTransfer[];
  readonly promises: readonly StoredPromise[];
  readonly apart: readonly { readonly lotId: string | null; readonly otherLotId: string | null }[];
}

// Lots with what their ledgers say of themselves; entries that were corrected or taken back do not count.
const lots: Selection<LotRow> = {
  columns: {
    id: "text",
    number: "text",
    varietyId: "text",
    holderId: "text",
    kind: "text",
    growOutId: "text",
    year: "text",
    yearFirst: "text",
    yearLast: "text",
    status: "text",
    statusReason: "text",
    founderLines: "text",
    donorNumber: "text",
    entries: "number",
    lastEntry: "text",
  },
  rows: sql`
    SELECT l."id", l."number", l."varietyId", l."holderId", l."kind", l."growOutId", l."year", l."yearFirst", l."yearLast", l."status",
           l."statusReason", l."founderLines", l."donorNumber", COUNT(e."id") AS "entries", MAX(e."onFirst") AS "lastEntry"
    FROM "Lot" m JOIN "Lot" l ON l."id" = COALESCE(m."sameAsId", m."id")
    LEFT JOIN "LedgerEntry" e ON e."lotId" = m."id" AND NOT e."takenBack"
      AND NOT EXISTS (SELECT 1 FROM "LedgerEntry" r WHERE r."replacesId" = e."id")
    GROUP BY l."id"`,
};

const containers: Selection<StoredRows["containers"][number]> = {
  columns: { lotId: "text", building: "text" },
  rows: sql`
    SELECT COALESCE(l."sameAsId", l."id") AS "lotId", COALESCE(p."building", p."id") AS "building"
    FROM "Container" c JOIN "Lot" l ON l."id" = c."lotId" JOIN "Place" p ON p."id" = c."placeId" ORDER BY c."id"`,
};

const people: Selection<StoredRows["people"][number]> = {
  columns: { stewardId: "text", name: "text" },
  rows: sql`SELECT p."stewardId", p."name" FROM "Person" p ORDER BY p."id"`,
};

const growOuts: Selection<SeasonGrowOut> = {
  columns: {
    id: "text",
    name: "text",
    varietyId: "text",
    sown: "text",
    sownFirst: "text",
    sownLast: "text",
    stewardId: "text",
    purpose: "text",
    plantsStanding: "number",
    seedParents: "number",
    outcome: "text",
  },
  rows: sql`
    SELECT g."id", g."name", g."varietyId", g."sown", g."sownFirst", g."sownLast", g."stewardId", g."purpose", g."plantsStanding",
           g."seedParents", g."outcome"
    FROM "GrowOut" g ORDER BY g."id"`,
};

const otherNames: Selection<RowOf<"VarietyName">> = {
  columns: {
    ...{ id: "text", varietyId: "text", name: "text", nameKey: "text", kind: "text", source: "text" },
    possiblySameAsId: "text",
  },
  rows: sql`SELECT n."id", n."varietyId", n."name", n."nameKey", n."kind", n."source", n."possiblySameAsId" FROM "VarietyName" n ORDER BY n."id"`,
};

// Answered questions whether two records are one lot: that they are one would stand on the records themselves.
const saidToBeTwo: Selection<StoredRows["apart"][number]> = {
  columns: { lotId: "text", otherLotId: "text" },
  rows: sql`
    SELECT q."lotId", q."otherLotId" FROM "Question" q
    WHERE q."kind" = 'same lot' AND q."answeredAt" IS NOT NULL ORDER BY q."id"`,
};

const words: Selection<StoredRows["words"][number]> = {
  columns: {
    id: "text",
    varietyId: "text",
    stewardId: "text",
    lotId: "text",
    on: "text",
    onFirst: "text",
    still: "text",
  },
  rows: sql`
    SELECT w."id", w."varietyId", w."stewardId", w."lotId", w."on", w."onFirst", w."still" FROM "HolderConfirmation" w ORDER BY w."id"`,
};

/** The stored rows: one statement where nothing changed since they were read, one more where something did. */
export const storedRows = keptUntilChange(readStored);

async function readStored(db: Database): Promise<StoredRows> {
  const { varieties, ownValues, ...rows } = await readTogether(db, {
    varieties: varietiesWithCrops,
    ownValues: ownValuesOfCrops,
    lots,
    containers,
    people,
    growOuts,
    scoredPlants,
    otherNames,
    words,
    tests: openTests,
    matters: openMatters,
    transfers: transfersStored,
    promises: promisesStored,
    apart: saidToBeTwo,
  });
  rows.lots.sort((a, b) => (a.number < b.number ? -1 : 1));
  return { ...rows, varieties: seasonVarieties(varieties, ownValues) };
}
