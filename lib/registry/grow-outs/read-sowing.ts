import { type Database, readTogether } from "@/lib/db";
import type { Settings } from "@/lib/schemas/settings";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import type { RowOf } from "../change-set/records";
import { readLotsToSow } from "./read-lots-to-sow";
import { crossList, type LotForCross } from "./read-plan-ground";
import type { LotToSow } from "./sowing-plan";

/** What is at hand when a grow-out is sown. */
export interface Sowing {
  readonly growOut: RowOf<"GrowOut">;
  readonly variety: {
    readonly id: string;
    readonly name: string;
    readonly seedCoat: string | null;
    readonly cropKey: string;
  };
  /** the lots of the plan, each with its share of the plants */
  readonly parents: readonly { readonly lot: LotToSow; readonly share: number | null }[];
  /** all lots of the variety, and those of other varieties that are parents */
  readonly lots: readonly LotToSow[];
  readonly crosses: readonly LotForCross[];
}

/** Reads what a grow-out is to be sown from; null where there is none. */
export async function readSowing(
  db: Database,
  growOutId: string,
  question: { readonly settings: Settings; readonly today: CivilDay },
): Promise<Sowing | null> {
  const found = await db.read.growOut.findUnique({
    where: { id: growOutId },
    include: {
      parents: { include: { lot: { select: { varietyId: true } } }, orderBy: { id: "asc" } },
      variety: { select: { id: true, name: true, seedCoat: true, crop: { select: { key: true } } } },
    },
  });
  if (!found) return null;
  const { parents, variety, ...growOut } = found;
  const lots = await readLotsToSow(db, variety.id, question);
  for (const other of new Set(parents.map((parent) => parent.lot.varietyId))) {
    if (other === variety.id) continue;
    const theirs = await readLotsToSow(db, other, question);
    lots.push(...theirs.filter((lot) => parents.some((parent) => parent.lotId === lot.id)));
  }
  const { crosses } = await readTogether(db, { crosses: crossList(variety.id) });
  return {
    growOut,
    variety: { id: variety.id, name: variety.name, seedCoat: variety.seedCoat, cropKey: variety.crop.key },
    parents: parents.flatMap((parent) => {
      const lot = lots.find(({ id }) => id === parent.lotId);
      return lot ? [{ lot, share: parent.share }] : [];
    }),
    lots,
    crosses,
  };
}
