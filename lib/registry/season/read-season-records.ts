import type { Database } from "@/lib/db";
import type { Settings } from "@/lib/schemas/settings";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import { parseDate } from "@/lib/science/dates/parse-date";
import { grouped } from "../change-set/grouped";
import { figuresOfAll } from "../figures/read-figures";
import { foldName } from "../names/fold-name";
import { holdersOf } from "../varieties/holders";
import type { FiguresForSeason, SeasonLot, SeasonRecords } from "./records";
import { pairKey } from "./rules/perhaps-one-lot";
import { type LotRow, type StoredRows, storedRows } from "./stored-rows";

/** Reads what the rules of the season look at. Two statements where nothing changed since it was last read; then the same records again. */
export async function readSeasonRecords(db: Database, settings: Settings, today: CivilDay): Promise<SeasonRecords> {
  return seasonRecords(await storedRows(db), await figuresOfAll(db), settings, today);
}

type Figures = ReadonlyMap<string, FiguresForSeason>;

interface Kept {
  readonly figures: Figures;
  readonly settings: string;
  readonly records: SeasonRecords;
}

// Worked out of rows, figures, settings and the day alone: while these are the same, so are they.
const shelf = new WeakMap<StoredRows, Kept>();

/** The season's records from stored rows and figures: who holds what, when each lot was last in hand, how its last test lies. */
export function seasonRecords(rows: StoredRows, figures: Figures, settings: Settings, today: CivilDay): SeasonRecords {
  const kept = shelf.get(rows);
  const asSet = JSON.stringify(settings);
  if (kept?.figures === figures && kept.settings === asSet && kept.records.today === today) return kept.records;
  const records = worked(rows, figures, settings, today);
  shelf.set(rows, { figures, settings: asSet, records });
  return records;
}

function worked(rows: StoredRows, figures: Figures, settings: Settings, today: CivilDay): SeasonRecords {
  const buildings = grouped(rows.containers, (container) => container.lotId);
  const lots = rows.lots.map((row) => seasonLot(row, figures.get(row.id), buildings.get(row.id) ?? [], settings));
  const lotsOf = grouped(lots, (lot) => lot.varietyId);
  const wordsOf = grouped(rows.words, (word) => word.varietyId);
  const holders = new Map(
    [...rows.varieties.values()].map(({ id, crop }) => {
      const rule = { today, confirmedYears: settings.confirmedYears, usualLifeYears: crop.seedLifeYearsMax };
      return [id, holdersOf(lotsOf.get(id) ?? [], wordsOf.get(id) ?? [], rule)] as const;
    }),
  );
  const { varieties, growOuts, scoredPlants, tests, words, matters, transfers, promises } = rows;
  const names = new Map(rows.people.map((person) => [person.stewardId, person.name]));
  const apart = new Set(rows.apart.map(({ lotId, otherLotId }) => pairKey(lotId ?? "", otherLotId ?? "")));
  return {
    today,
    settings,
    varieties,
    lots,
    growOuts,
    scoredPlants,
    tests,
    words,
    matters,
    transfers,
    promises,
    apart,
    names,
    holders,
  };
}

function seasonLot(
  row: LotRow,
  figures: FiguresForSeason | undefined,
  containers: readonly { building: string }[],
  settings: Settings,
): SeasonLot {
  const lastTest = figures?.lastTest ?? null;
  const tested = lastTest === null ? null : parseDate(lastTest.date, { hemisphere: settings.hemisphere });
  const testedOn = tested?.ok ? tested.value : null;
  const days = [row.lastEntry, testedOn?.first ?? null].filter((day): day is string => day !== null).sort();
  return {
    gramsOnHand: figures?.gramsOnHand ?? null,
    effectiveSize: figures?.effectiveSize ?? null,
    diversityRetained: figures?.diversityRetained ?? null,
    lastTest,
    lastTestFirst: testedOn?.first ?? null,
    lastTestLast: testedOn?.last ?? null,
    lastInHand: days.at(-1) ?? null,
    buildings: containers.map(({ building }) => foldName(building)),
    ...row,
  };
}
