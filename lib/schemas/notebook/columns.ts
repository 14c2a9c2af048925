import { accepted } from "@/lib/science/outcome";
import {
  type CellReader,
  readCount,
  readDay,
  readDecimalWithin,
  readName,
  readOneOf,
  readSeedShares,
  readText,
} from "./cells";
import { type LotShare, type LotSource, ledgerKinds, lotKinds, stewardKinds, yesNo } from "./kinds";

/** A column of a file: whether every row needs it, and how its cell is read. */
export interface Column<T, Needed extends boolean = boolean> {
  readonly needed: Needed;
  readonly read: CellReader<T>;
  /** the cell names other records: it is read when all names are known */
  readonly later: boolean;
}

function needed<T>(read: CellReader<T>): Column<T, true> {
  return { needed: true, read, later: false };
}

function open<T>(read: CellReader<T>): Column<T, false> {
  return { needed: false, read, later: false };
}

const lotList: CellReader<readonly LotShare[]> = () => accepted([]);
const lotSource: CellReader<LotSource | null> = () => accepted(null);

const grams = readDecimalWithin({ atLeast: 0 });
const share = readDecimalWithin({ atLeast: 0, atMost: 1 });

export const stewardColumns = {
  steward: needed(readName),
  place: open(readText),
  kind: open(readOneOf(stewardKinds)),
};

export const varietyColumns = {
  variety: needed(readName),
  crop: needed(readName),
  story: open(readText),
  type_description: open(readText),
};

export const growOutColumns = {
  grow_out: needed(readName),
  variety: needed(readName),
  steward: open(readName),
  plot: open(readName),
  sown: open(readDay),
  parents: { needed: true, read: lotList, later: true } satisfies Column<readonly LotShare[], true>,
  seeds_sown: open(readCount(1)),
  plants_standing: open(readCount(0)),
  males_standing: open(readCount(0)),
  rogued_before_pollen: open(readCount(0)),
  rogued_after_pollen: open(readCount(0)),
  seed_parents: open(readCount(0)),
  seed_shares: open(readSeedShares),
  selfing_rate: open(share),
  foreign_pollen: open(share),
  outcome: open(readText),
};

export const lotColumns = {
  lot: needed(readName),
  variety: needed(readName),
  holder: open(readName),
  year: open(readDay),
  kind: needed(readOneOf(lotKinds)),
  from: { needed: false, read: lotSource, later: true } satisfies Column<LotSource | null, false>,
  thousand_seed_grams: open(readDecimalWithin({ above: 0 })),
  inbreeding: open(share),
  notes: open(readText),
};

export const plantColumns = {
  grow_out: needed(readName),
  plant: needed(readName),
  cell: open(readName),
  kept: open(readOneOf(yesNo)),
  seed_grams: open(grams),
};

export const testColumns = {
  test: needed(readName),
  lot: needed(readName),
  date: needed(readDay),
  replicate: needed(readName),
  sown: needed(readCount(1, false)),
  day: open(grams),
  normal: needed(readCount(0)),
  abnormal: open(readCount(0)),
  hard: open(readCount(0)),
  fresh: open(readCount(0)),
  dead: open(readCount(0)),
};

export const ledgerColumns = {
  lot: needed(readName),
  date: needed(readDay),
  kind: needed(readOneOf(ledgerKinds)),
  // Of 0 only a weighing may speak; that takes the kind to know.
  grams: needed(readDecimalWithin({ atLeast: 0, needed: "write grams above 0 (what was weighed may be 0)" })),
  other: open(readText),
  notes: open(readText),
};

/** A column of plants.csv that holds the scores of one trait. */
export const scorePrefix = "score:";

/** The seven files of a notebook folder, in the order in which their records build on one another. */
export const notebookTables = {
  stewards: { file: "stewards.csv", columns: stewardColumns, named: "steward" },
  varieties: { file: "varieties.csv", columns: varietyColumns, named: "variety" },
  growOuts: { file: "grow_outs.csv", columns: growOutColumns, named: "grow_out" },
  lots: { file: "lots.csv", columns: lotColumns, named: "lot" },
  plants: { file: "plants.csv", columns: plantColumns, named: null },
  tests: { file: "tests.csv", columns: testColumns, named: null },
  ledger: { file: "ledger.csv", columns: ledgerColumns, named: null },
} as const;

export type TableName = keyof typeof notebookTables;
export const tableNames = Object.keys(notebookTables) as readonly TableName[];
export type ColumnsOf<Table extends TableName> = (typeof notebookTables)[Table]["columns"];
