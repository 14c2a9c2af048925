import type { FieldPack } from "@/lib/schemas/field/field-pack";

/** Where the pictures of the traits lie; the worker gives them from there when there is no signal. */
const pictures = "kinrow-field-pictures";

/** Where a picture of the registry is asked for. */
export function pictureAddress(hash: string): string {
  return `/photos/${hash}`;
}

/**
 * Keeps the pictures that show the traits of these packs, and no others. A picture that does not come is asked for at the next taking along: none of
 * them is needed to record.
 */
export async function keepPictures(packs: readonly FieldPack[]): Promise<void> {
  if (!("caches" in globalThis)) return;
  const wanted = new Set(packs.flatMap((pack) => pack.traits.flatMap((trait) => trait.photos)).map(pictureAddress));
  const cache = await caches.open(pictures);
  for (const { url } of await cache.keys()) {
    const { pathname } = new URL(url);
    if (wanted.has(pathname)) wanted.delete(pathname);
    else await cache.delete(url);
  }
  await Promise.allSettled([...wanted].map((address) => cache.add(address)));
}
