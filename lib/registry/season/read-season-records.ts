import type { Database } from "@/lib/db";
import type { Settings } from "@/lib/schemas/settings";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import { parseDate } from "@/lib/science/dates/parse-date";
import { grouped } from "../change-set/grouped";
import { foldName } from "../names/fold-name";
import { holdersOf } from "../varieties/holders";
import { readOpenMatters } from "./read-open-matters";
import { readOpenTests } from "./read-open-tests";
import { readVarieties } from "./read-varieties";
import type { FiguresForSeason, SeasonGrowOut, SeasonLot, SeasonRecords } from "./records";

interface LotRow {
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
  readonly entries: number | bigint;
  readonly lastEntry: string | null;
}

// One statement for all lots with what their ledgers say of themselves; entries that were corrected or taken back do not count.
const lotsWithLedger = `
  SELECT l."id", l."number", l."varietyId", l."holderId", l."kind", l."growOutId", l."year", l."yearFirst", l."yearLast", l."status",
         l."statusReason", COUNT(e."id") AS "entries", MAX(e."onFirst") AS "lastEntry"
  FROM "Lot" l
  LEFT JOIN "LedgerEntry" e ON e."lotId" = l."id" AND NOT e."takenBack"
    AND NOT EXISTS (SELECT 1 FROM "LedgerEntry" r WHERE r."replacesId" = e."id")
  GROUP BY l."id"`;

const containersWithBuildings = `
  SELECT c."lotId", COALESCE(p."building", p."id") AS "building" FROM "Container" c JOIN "Place" p ON p."id" = c."placeId"`;

/** Reads what the rules of the season look at, in nine statements, however many records there are. */
export async function readSeasonRecords(
  db: Database,
  settings: Settings,
  today: CivilDay,
  figures: ReadonlyMap<string, FiguresForSeason>,
): Promise<SeasonRecords> {
  const varieties = await readVarieties(db);
  const lotRows = await db.read.$queryRawUnsafe<LotRow[]>(lotsWithLedger);
  const containers = await db.read.$queryRawUnsafe<{ lotId: string; building: string }[]>(containersWithBuildings);
  const buildings = grouped(containers, (container) => container.lotId);
  const lots = lotRows
    .map((row) => seasonLot(row, figures.get(row.id), buildings.get(row.id) ?? [], settings))
    .sort((a, b) => (a.number < b.number ? -1 : 1));
  const people = await db.read.person.findMany({ select: { stewardId: true, name: true } });
  const growOuts: SeasonGrowOut[] = await db.read.growOut.findMany({
    select: { id: true, name: true, varietyId: true, sown: true, sownFirst: true, sownLast: true },
    orderBy: { id: "asc" },
  });
  const words = await db.read.holderConfirmation.findMany({
    select: { id: true, varietyId: true, stewardId: true, lotId: true, on: true, onFirst: true, still: true },
  });
  const lotsOf = grouped(lots, (lot) => lot.varietyId);
  const wordsOf = grouped(words, (word) => word.varietyId);
  const holders = new Map(
    [...varieties.values()].map(({ id, crop }) => {
      const rule = { today, confirmedYears: settings.confirmedYears, usualLifeYears: crop.seedLifeYearsMax };
      return [id, holdersOf(lotsOf.get(id) ?? [], wordsOf.get(id) ?? [], rule)] as const;
    }),
  );
  return {
    today,
    settings,
    varieties,
    lots,
    growOuts,
    tests: await readOpenTests(db),
    words,
    matters: await readOpenMatters(db),
    names: new Map(people.map((person) => [person.stewardId, person.name])),
    holders,
  };
}

function seasonLot(
  { lastEntry, entries, ...row }: LotRow,
  figures: FiguresForSeason | undefined,
  containers: readonly { building: string }[],
  settings: Settings,
): SeasonLot {
  const lastTest = figures?.lastTest ?? null;
  const tested = lastTest === null ? null : parseDate(lastTest.date, { hemisphere: settings.hemisphere });
  const testedOn = tested?.ok ? tested.value : null;
  const days = [lastEntry, testedOn?.first ?? null].filter((day): day is string => day !== null).sort();
  return {
    ...row,
    entries: Number(entries),
    gramsOnHand: figures?.gramsOnHand ?? null,
    effectiveSize: figures?.effectiveSize ?? null,
    lastTest,
    lastTestFirst: testedOn?.first ?? null,
    lastTestLast: testedOn?.last ?? null,
    lastInHand: days.at(-1) ?? null,
    buildings: containers.map(({ building }) => foldName(building)),
  };
}
