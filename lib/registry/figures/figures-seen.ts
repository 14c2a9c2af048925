import type { Client, Database } from "@/lib/db";
import { keptUntilChange } from "../change-set/kept-until-change";

interface Kept<F> {
  readonly of: ReadonlyMap<string, F>;
  readonly varieties: ReadonlySet<string>;
  readonly seen: ReadonlyMap<string, F>;
}

const kept = new WeakMap<Client, Kept<unknown>>();

const varietiesSeen = keptUntilChange(async (db) => {
  const rows = await db.read.variety.findMany({ select: { id: true } });
  return new Set(rows.map(({ id }) => id));
});

/**
 * Figures of the lots whose variety somebody sees. They are worked out of the whole registry, so that a lot's figures are the same for everybody,
 * also where a line of its descent is hidden; the same map while nothing has changed.
 */
export async function figuresSeen<F extends { readonly varietyId: string }>(
  db: Database,
  of: ReadonlyMap<string, F>,
): Promise<ReadonlyMap<string, F>> {
  const varieties = await varietiesSeen(db);
  const known = kept.get(db.read) as Kept<F> | undefined;
  if (known?.of === of && known.varieties === varieties) return known.seen;
  const hidden = [...of.values()].some((each) => !varieties.has(each.varietyId));
  const seen = hidden ? new Map([...of].filter(([, each]) => varieties.has(each.varietyId))) : of;
  kept.set(db.read, { of, varieties, seen });
  return seen;
}
