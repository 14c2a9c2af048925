/** A whole number from a name, the same on every machine (FNV-1a, 32 bit, over the UTF-16 units; Fowler, Noll and Vo 1991). */
export function numberOf(name: string): number {
  let hash = 0x811c9dc5;
  for (let at = 0; at < name.length; at++) {
    hash = Math.imul(hash ^ name.charCodeAt(at), 0x01000193) >>> 0;
  }
  return hash;
}

/**
 * A stream of numbers in 0..1 that a start number fixes (the 32-bit mixing counter by Tommy Ettinger, "mulberry32"). It only
 * scatters specks on a drawing; nothing is computed from it.
 */
export function numberStream(start: number): () => number {
  let state = start >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}
