import { uuidv7 } from "uuidv7";
import type { Database, Prisma } from "@/lib/db";
import { foldName } from "@/lib/registry/names/fold-name";
import type { NewHarvestInput, ToldParent } from "@/lib/schemas/harvests/harvest-entry";
import { parseDate } from "@/lib/science/dates/parse-date";
import { granted } from "@/tests/setup/registry";
import { aLot, aVariety } from "../lots/lots-in-tests";

/** A grow-out of maize with 40 plants standing and as many marked plants as asked for. */
export async function aGrowOut(
  db: Database,
  { plants = 0, crop = "maize-field", name = "Ford 2026", ...more }: GrowOutFields = {},
): Promise<{ id: string; varietyId: string; plants: string[] }> {
  const varietyId = await aVariety(db, `${name} Flint`, crop);
  const sown = await aLot(db, varietyId, { number: `${name} old`, year: "2020" });
  const id = uuidv7();
  const counts = { plantsStanding: 40, roguedBeforePollen: 0, ...more };
  await db.write.growOut.create({
    data: { id, name, nameKey: foldName(name), varietyId, sown: "2026-05-02", sownFirst: "2026-05-02", ...counts },
  });
  await db.write.growOutParent.create({ data: { id: uuidv7(), growOutId: id, lotId: sown, share: 1 } });
  const made: string[] = [];
  for (let place = 1; place <= plants; place++) {
    const plant = uuidv7();
    await db.write.plant.create({
      data: { id: plant, growOutId: id, name: String(place), nameKey: String(place) },
    });
    made.push(plant);
  }
  return { id, varietyId, plants: made };
}

type GrowOutFields = { plants?: number; crop?: string; name?: string } & Partial<Prisma.GrowOutUncheckedCreateInput>;

/** Plants with what each gave, in grams. */
export function weighed(plants: readonly (string | null)[], grams: readonly (number | null)[]): ToldParent[] {
  return plants.map((plantId, row) => ({ row, plantId, grams: grams[row] ?? null, seeds: null, lost: null }));
}

/** A harvest of the autumn, all together unless told. */
export function harvest(more: Partial<NewHarvestInput> = {}): NewHarvestInput {
  return {
    on: granted(parseDate("2026-09-20")),
    bulked: "all together",
    seedParents: null,
    parents: [],
    grams: null,
    seeds: null,
    detasselled: null,
    seedParentsDetasselled: null,
    mouldyShare: null,
    note: null,
    number: null,
    holder: null,
    newHolder: null,
    ...more,
  };
}
