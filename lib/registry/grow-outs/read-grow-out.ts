import type { Database } from "@/lib/db";
import { grouped } from "../change-set/grouped";
import type { RowOf } from "../change-set/records";
import { figuresOfAll, type LotFigures } from "../figures/read-figures";
import type { SeasonVariety } from "../season/records";
import { storedRows } from "../season/stored-rows";
import { type EventOfGrowOut, eventsOfGrowOut } from "./events-of-grow-out";
import { type PlantOfGrowOut, plantsOfGrowOut } from "./plants-of-grow-out";

/** A lot that was sown, with its share of the plants; null: not written. */
export interface SownLot {
  readonly id: string;
  readonly number: string;
  readonly varietyId: string;
  readonly variety: string;
  readonly year: string | null;
  readonly share: number | null;
  readonly inbreeding: number | null;
}

/** A grow-out with all that its page shows. */
export interface GrowOutRead {
  readonly growOut: RowOf<"GrowOut">;
  readonly variety: SeasonVariety;
  readonly steward: string | null;
  readonly plots: readonly {
    id: string;
    name: string;
    place: string | null;
    fromOn: string | null;
    toOn: string | null;
  }[];
  readonly parents: readonly SownLot[];
  readonly harvested: readonly { id: string; number: string; year: string | null; figures: LotFigures | null }[];
  readonly harvests: readonly RowOf<"Harvest">[];
  readonly events: readonly EventOfGrowOut[];
  readonly plants: readonly PlantOfGrowOut[];
  /** names of the traits that were scored, in the order of first use */
  readonly traits: readonly string[];
  readonly people: ReadonlyMap<string, string>;
}

/** A grow-out by its id; null where there is none. Nine statements where nothing changed since the registry was last read. */
export async function readGrowOut(db: Database, id: string): Promise<GrowOutRead | null> {
  const growOut = await db.read.growOut.findUnique({ where: { id } });
  if (!growOut) return null;
  const stored = await storedRows(db);
  const variety = stored.varieties.get(growOut.varietyId);
  if (!variety) return null;
  const figures = await figuresOfAll(db);
  const people = new Map(stored.people.map((person) => [person.stewardId, person.name]));
  const lots = new Map(stored.lots.map((lot) => [lot.id, lot]));
  const sown = await db.read.growOutParent.findMany({ where: { growOutId: id }, orderBy: { id: "asc" } });
  const parents = sown.flatMap((parent): SownLot[] => {
    const lot = lots.get(parent.lotId);
    if (!lot) return [];
    const of = stored.varieties.get(lot.varietyId)?.name ?? "";
    const inbreeding = figures.get(lot.id)?.inbreeding ?? null;
    return [
      {
        id: lot.id,
        number: lot.number,
        varietyId: lot.varietyId,
        variety: of,
        year: lot.year,
        share: parent.share,
        inbreeding,
      },
    ];
  });
  const plots = await db.read.$queryRaw<
    GrowOutRead["plots"]
  >`SELECT p."id", p."name", p."place", g."fromOn", g."toOn" FROM "GrowOutPlot" g JOIN "Plot" p ON p."id" = g."plotId"
     WHERE g."growOutId" = ${id} ORDER BY g."id"`;
  const plants = await plantsOfGrowOut(db, id);
  return {
    growOut,
    variety,
    steward: growOut.stewardId === null ? null : (people.get(growOut.stewardId) ?? null),
    plots,
    parents,
    harvested: (grouped(stored.lots, (lot) => lot.growOutId).get(id) ?? []).map((lot) => ({
      id: lot.id,
      number: lot.number,
      year: lot.year,
      figures: figures.get(lot.id) ?? null,
    })),
    harvests: await db.read.harvest.findMany({ where: { growOutId: id }, orderBy: { id: "asc" } }),
    events: await eventsOfGrowOut(db, id),
    plants,
    traits: [...new Set(plants.flatMap((plant) => [...plant.scores.keys()]))],
    people,
  };
}
