import { type Database, readTogether } from "@/lib/db";
import type { Settings } from "@/lib/schemas/settings";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import type { RowOf } from "../change-set/records";
import { headSelection, parentsSelection } from "./grow-out-selections";
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
  const found = await readTogether(db, { heads: headSelection(growOutId), parents: parentsSelection(growOutId) });
  const [growOut] = found.heads;
  if (!growOut) return null;
  const { varietyId } = growOut;
  const lots = await readLotsToSow(db, varietyId, question);
  for (const other of new Set(found.parents.map((parent) => parent.varietyId))) {
    if (other === varietyId) continue;
    const theirs = await readLotsToSow(db, other, question);
    lots.push(...theirs.filter((lot) => found.parents.some((parent) => parent.id === lot.id)));
  }
  const { crosses } = await readTogether(db, { crosses: crossList(varietyId) });
  return {
    growOut,
    variety: { id: varietyId, name: growOut.variety, seedCoat: growOut.seedCoat, cropKey: growOut.cropKey },
    parents: found.parents.flatMap((parent) => {
      const lot = lots.find(({ id }) => id === parent.id);
      return lot ? [{ lot, share: parent.share }] : [];
    }),
    lots,
    crosses,
  };
}
