import { type Client, type Database, placeholders } from "@/lib/db";
import type { Refusal } from "@/lib/science/outcome";
import { figuresBeside } from "./figures-beside";
import type { LotFigure, TestFigure } from "./figures-of-records";
import { figuresSeen } from "./figures-seen";
import { othersFirst } from "./in-turns";
import { LotFigures as LineageFigures } from "./lineage-of-records";
import { type RecordsOfCrops, readRecords } from "./read-records";
import type { LotRecord } from "./records";
import { recordsByCrop } from "./records-by-crop";
import type { SpanOfLot } from "./span-of-lot";

/** Everything worked out of one lot, with the ids that lead to its records. Null is not known. */
export interface LotFigures extends Omit<LotFigure, "lot" | "variety" | "holder" | "lastTest" | "tested" | "span"> {
  readonly lotId: string;
  readonly number: string;
  readonly varietyId: string;
  readonly lastTest: LastTest | null;
  /** what the records allow where its line of descent is not known throughout; null where the figures are points, or no figure stands */
  readonly span: SpanOfLot | null;
  /** false where the crop is kept by division and has no lineage figures */
  readonly lineageFigures: boolean;
}

export interface LastTest extends TestFigure {
  readonly testId: string;
  readonly sown: number;
  readonly normal: number;
}

interface Shelf {
  readonly revision: number;
  readonly figures: Promise<ReadonlyMap<string, LotFigures>>;
}

// Figures by crop (a cross stays within its crop), under the revision of the crop's last change.
const shelves = new WeakMap<Client, Map<string, Shelf>>();

/** The figures of all lots of a variety, by lot id. */
export async function figuresOfVariety(db: Database, varietyId: string): Promise<Figures> {
  const figures = await figuresOfCropOf(db, varietyId);
  return new Map([...figures].filter(([, each]) => each.varietyId === varietyId));
}

/** The figures of all lots of a variety's crop, its own and those that it could be crossed with; by lot id. One statement, one more after a change. */
export async function figuresOfCropOf(db: Database, varietyId: string): Promise<Figures> {
  if (db.whole) return figuresSeen(db, await figuresOfCropOf(db.whole, varietyId));
  const [crop] = await db.read.$queryRawUnsafe<{ cropId: string; revision: number | bigint }[]>(
    `SELECT v."cropId", MAX(v."revision") AS "revision" FROM "Variety" v
     WHERE v."cropId" = (SELECT "cropId" FROM "Variety" WHERE "id" = ${placeholders(db.engine, 1)}) GROUP BY v."cropId"`,
    varietyId,
  );
  if (!crop) return new Map();
  const [figures] = await figuresOfCrops(db, [{ cropId: crop.cropId, revision: Number(crop.revision) }]);
  return figures ?? new Map();
}

interface Whole {
  readonly parts: readonly Figures[];
  readonly figures: Figures;
}

const wholes = new WeakMap<Client, Whole>();

/** The figures of all lots, by lot id; the same map while nothing has changed. One statement then, one more where something has. */
export async function figuresOfAll(db: Database): Promise<Figures> {
  if (db.whole) return figuresSeen(db, await figuresOfAll(db.whole));
  const crops = await db.read.variety.groupBy({ by: ["cropId"], _max: { revision: true }, orderBy: { cropId: "asc" } });
  const parts = await figuresOfCrops(
    db,
    crops.map(({ cropId, _max }) => ({ cropId, revision: _max.revision ?? 0 })),
  );
  const kept = wholes.get(db.read);
  if (kept && kept.parts.length === parts.length && kept.parts.every((part, place) => part === parts[place])) {
    return kept.figures;
  }
  const figures = new Map(parts.flatMap((part) => [...part]));
  wholes.set(db.read, { parts, figures });
  return figures;
}

type Figures = ReadonlyMap<string, LotFigures>;

/** Those that are kept under their revision are taken as they are; the others are read and worked out together. */
async function figuresOfCrops(
  db: Database,
  crops: readonly { cropId: string; revision: number }[],
): Promise<Figures[]> {
  const shelf = shelves.get(db.read) ?? new Map<string, Shelf>();
  shelves.set(db.read, shelf);
  const stale = crops.filter(({ cropId, revision }) => shelf.get(cropId)?.revision !== revision);
  if (stale.length > 0) {
    const worked = readRecords(
      db,
      stale.map(({ cropId }) => cropId),
    ).then(workedOut);
    for (const { cropId, revision } of stale) {
      const figures = worked.then((byCrop) => byCrop.get(cropId) ?? new Map());
      shelf.set(cropId, { revision, figures });
      figures.catch(() => shelf.delete(cropId));
    }
  }
  return Promise.all(crops.map(({ cropId }) => shelf.get(cropId)?.figures ?? new Map()));
}

/** Figures by lot, by crop: crop after crop, so that between them the server answers others. */
async function workedOut(records: RecordsOfCrops): Promise<ReadonlyMap<string, Figures>> {
  const byCrop = new Map<string, Figures>();
  await othersFirst();
  const each = recordsByCrop(records);
  await othersFirst();
  for (const [cropId, own] of each) {
    byCrop.set(cropId, await figuresOfCrop(own));
    await othersFirst();
  }
  return byCrop;
}

async function figuresOfCrop(records: RecordsOfCrops): Promise<Figures> {
  const outcome = await figuresBeside(records);
  if (!outcome.ok) throw new StoredRecordsRefused(outcome.refusals);
  await othersFirst();
  const lots = new Map(records.lots.map((lot) => [lot.number, lot]));
  const clonal = new Set(records.varieties.filter((variety) => variety.clonal).map((variety) => variety.id));
  const figures = new Map<string, LotFigures>();
  for (const figure of outcome.value) {
    const lot = lots.get(figure.lot);
    if (!lot) continue;
    const lineageFigures = !clonal.has(lot.varietyId);
    figures.set(lot.id, new KeptFigures(lot, figure, withCounts(figure), lineageFigures));
  }
  return figures;
}

class KeptFigures extends LineageFigures implements LotFigures {
  readonly lotId: string;
  readonly number: string;
  readonly varietyId: string;
  readonly gramsOnHand: number | null;
  readonly founders: readonly string[];
  readonly lastTest: LastTest | null;
  readonly span: SpanOfLot | null;
  readonly lineageFigures: boolean;
  readonly #figure: LotFigure;
  #assumed: readonly string[] | null = null;

  constructor(lot: LotRecord, figure: LotFigure, lastTest: LastTest | null, lineageFigures: boolean) {
    super(figure);
    this.lotId = lot.id;
    this.number = lot.number;
    this.varietyId = lot.varietyId;
    this.gramsOnHand = figure.gramsOnHand;
    this.founders = figure.founders;
    this.lastTest = lastTest;
    this.span = figure.span;
    this.lineageFigures = lineageFigures;
    this.#figure = figure;
  }

  get assumed(): readonly string[] {
    this.#assumed ??= this.#figure.assumed;
    return this.#assumed;
  }
}

function withCounts({ lastTest, tested }: LotFigure): LastTest | null {
  if (!lastTest || !tested) return null;
  const { test, date, germination, low, high } = lastTest;
  return { test, date, germination, low, high, testId: tested.id, sown: tested.sown, normal: tested.normal };
}

/** Stored records were checked when they were stored; where they no longer fit together, the sentences say where. */
export class StoredRecordsRefused extends Error {
  constructor(readonly refusals: readonly Refusal[]) {
    super(refusals.map((each) => `${each.path.join(" ")}: ${each.sentence}`).join("\n"));
  }
}
