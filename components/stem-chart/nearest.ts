import type { PlacedLot, StemPicture } from "./layout/position";
import type { Kin } from "./trace";

/** The lot whose mark is nearest to a point of the picture, if one is within reach (pixels). */
export function nearestLot(picture: StemPicture, x: number, y: number, reach: number): string | null {
  let found: string | null = null;
  let least = reach * reach;
  for (const lot of picture.lots) {
    if (lot.fold !== null) continue;
    const far = (lot.x - x) ** 2 + (lot.y - y) ** 2;
    if (far < least) [found, least] = [lot.grown.lot.id, far];
  }
  return found;
}

/**
 * Where a key leads from a lot: left to a parent, right to what came of it, up and down to the nearest lot above and below, Home and End to the
 * first and the last. Folded lots are passed over. Null where the key leads nowhere.
 */
export function neighbour(picture: StemPicture, kin: Kin, from: PlacedLot, key: string): string | null {
  const place = new Map(picture.lots.map((lot) => [lot.grown.lot.id, lot]));
  const { id } = from.grown.lot;
  if (key === "ArrowLeft") return along(kin.parents, id, place, from);
  if (key === "ArrowRight") return along(kin.children, id, place, from);
  const open = picture.lots.filter((lot) => lot.fold === null).sort((a, b) => a.x - b.x);
  if (key === "Home") return open[0]?.grown.lot.id ?? null;
  if (key === "End") return open.at(-1)?.grown.lot.id ?? null;
  // Through all of them by year: arrows alone need not come to every lot.
  const turn = open.findIndex((lot) => lot.grown.lot.id === id);
  if (key === "PageDown") return open[turn + 1]?.grown.lot.id ?? null;
  if (key === "PageUp") return open[turn - 1]?.grown.lot.id ?? null;
  if (key !== "ArrowUp" && key !== "ArrowDown") return null;
  const sign = key === "ArrowUp" ? -1 : 1;
  const beyond = open
    .filter((lot) => (lot.y - from.y) * sign > 1)
    .sort((a, b) => distance(a, from) - distance(b, from));
  return beyond[0]?.grown.lot.id ?? null;
}

function distance(one: PlacedLot, other: PlacedLot): number {
  return Math.abs(one.x - other.x) + 2 * Math.abs(one.y - other.y);
}

/** The nearest of the next that are not folded; of several the one that stays nearest to the lane. */
function along(
  links: ReadonlyMap<string, readonly string[]>,
  id: string,
  place: ReadonlyMap<string, PlacedLot>,
  from: PlacedLot,
): string | null {
  const seen = new Set([id]);
  let next = [...(links.get(id) ?? [])];
  while (next.length > 0) {
    const open = next.flatMap((each) => place.get(each) ?? []).filter((lot) => lot.fold === null);
    if (open.length > 0) {
      return open.sort((a, b) => Math.abs(a.y - from.y) - Math.abs(b.y - from.y) || a.x - b.x)[0]?.grown.lot.id ?? null;
    }
    for (const each of next) seen.add(each);
    next = next.flatMap((each) => links.get(each) ?? []).filter((each) => !seen.has(each));
  }
  return null;
}
