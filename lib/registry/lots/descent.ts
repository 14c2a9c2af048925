import type { Client, Transaction } from "@/lib/db";
import { grouped } from "../change-set/grouped";

/** What comes from what in a crop: a lot from the grow-out that gave it or the lots mixed into it, a grow-out from the lots sown in it. */
export interface Descent {
  /** the id of the leading record of a lot; of a grow-out its own */
  leading(id: string): string;
  /** ids of what a lot or grow-out comes from in one step */
  from(id: string): readonly string[];
  nameOf(id: string): string;
}

/**
 * Reads the descent of a crop, in which a cross stays: several records of one lot are one on the way, whatever each of them says of its
 * parents. With `claims` also what is claimed, believed or not, and not set aside, `but` one claim. Four statements, five with claims.
 */
export async function readDescent(
  db: Client | Transaction,
  cropId: string,
  { claims, but = null }: { readonly claims: boolean; readonly but?: string | null },
): Promise<Descent> {
  const ofCrop = { variety: { cropId } };
  const lots = await db.lot.findMany({
    where: ofCrop,
    select: { id: true, number: true, growOutId: true, sameAsId: true },
  });
  const growOuts = await db.growOut.findMany({ where: ofCrop, select: { id: true, name: true } });
  const sown = await db.growOutParent.findMany({
    where: { growOut: ofCrop },
    select: { growOutId: true, lotId: true },
  });
  const mixed = await db.lotParent.findMany({ where: { lot: ofCrop }, select: { lotId: true, parentLotId: true } });
  const claimed = claims ? await claimsThatCount(db, cropId, but) : [];
  const led = new Map(lots.map(({ id, sameAsId }) => [id, sameAsId ?? id]));
  const leading = (id: string) => led.get(id) ?? id;
  const names = new Map([
    ...lots.map(({ id, number }) => [id, number] as const),
    ...growOuts.map(({ id, name }) => [id, name] as const),
  ]);
  const steps = grouped(
    [
      ...lots.flatMap(({ id, growOutId }) => (growOutId === null ? [] : [{ of: leading(id), from: growOutId }])),
      ...sown.map(({ growOutId, lotId }) => ({ of: growOutId, from: leading(lotId) })),
      ...[...mixed, ...claimed].map(({ lotId, parentLotId }) => ({ of: leading(lotId), from: leading(parentLotId) })),
    ],
    ({ of }) => of,
  );
  return {
    leading,
    from: (id) => (steps.get(leading(id)) ?? []).map(({ from }) => from),
    nameOf: (id) => names.get(id) ?? "",
  };
}

async function claimsThatCount(db: Client | Transaction, cropId: string, but: string | null) {
  const claims = await db.lineageClaim.findMany({
    where: { lot: { variety: { cropId } } },
    select: { id: true, lotId: true, parentLotId: true, kind: true, standing: true, replacesId: true },
  });
  const over = new Set([but, ...claims.map(({ replacesId }) => replacesId)]);
  return claims.flatMap(({ id, lotId, parentLotId, kind, standing }) =>
    kind === "descends from" && parentLotId !== null && standing !== "set aside" && !over.has(id)
      ? [{ lotId, parentLotId }]
      : [],
  );
}

/** The way from a lot up to an ancestor, both among its steps; null where the one does not come from the other. */
export function wayUp(descent: Descent, from: string, to: string): string[] | null {
  const [start, goal] = [descent.leading(from), descent.leading(to)];
  const cameBy = new Map<string, string | null>([[start, null]]);
  for (const at of cameBy.keys()) {
    if (at === goal && at !== start) return wayTo(at, cameBy);
    for (const next of descent.from(at)) if (!cameBy.has(next)) cameBy.set(next, at);
  }
  return null;
}

/** The way from a lot back to itself, which no seed can go; null where there is none. */
export function cycleThrough(descent: Descent, id: string): string[] | null {
  const own = descent.leading(id);
  for (const next of descent.from(own)) {
    const way = next === own ? [own] : wayUp(descent, next, own);
    if (way !== null) return [own, ...way];
  }
  return null;
}

function wayTo(goal: string, cameBy: ReadonlyMap<string, string | null>): string[] {
  const way: string[] = [];
  for (let at: string | null = goal; at !== null; at = cameBy.get(at) ?? null) way.unshift(at);
  return way;
}

/** A way in words: `Quern 3 from Quern 2019 from Quern 1`. */
export function wayInWords(descent: Descent, way: readonly string[]): string {
  return way.map((id) => descent.nameOf(id)).join(" from ");
}
