import { uuidv7 } from "uuidv7";
import type { Database, Prisma } from "@/lib/db";
import { foldName } from "@/lib/registry/names/fold-name";
import type { NeighbourInput } from "@/lib/schemas/neighbours/neighbour";
import type { FuzzyDate } from "@/lib/science/dates/fuzzy-date";
import { parseDate } from "@/lib/science/dates/parse-date";
import { granted } from "../../setup/registry";
import { aVariety } from "../lots/lots-in-tests";

export const day = (text: string): FuzzyDate => granted(parseDate(text));

/** A grow-out of a variety of that crop, on a plot of 400 m². */
export async function aGrowOut(
  db: Database,
  cropKey = "maize-field",
  more: Partial<Prisma.GrowOutUncheckedCreateInput> = {},
): Promise<{ growOutId: string; varietyId: string; plotId: string }> {
  const varietyId = await aVariety(db, `Sallow ${cropKey}`, cropKey);
  const [growOutId, plotId] = [uuidv7(), uuidv7()];
  const name = `G ${cropKey}`;
  await db.write.growOut.create({ data: { id: growOutId, name, nameKey: foldName(name), varietyId, ...more } });
  await db.write.plot.create({ data: { id: plotId, name: "Ash strip", nameKey: "ash strip", areaM2: 400 } });
  await db.write.growOutPlot.create({ data: { id: uuidv7(), growOutId, plotId } });
  return { growOutId, varietyId, plotId };
}

/** The id of a crop of the list. */
export async function cropId(db: Database, key: string): Promise<string> {
  return (await db.read.crop.findUniqueOrThrow({ where: { key } })).id;
}

/** A neighbour source as it would be typed in: only what it is, unless told. */
export function neighbour(what: string, more: Partial<NeighbourInput> = {}): NeighbourInput {
  return {
    what,
    crop: null,
    variety: null,
    plot: null,
    distanceMetres: null,
    bearing: null,
    sizeM2: null,
    plants: null,
    windowFirst: null,
    windowLast: null,
    howSure: null,
    note: null,
    ...more,
  };
}
