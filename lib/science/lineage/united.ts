/** Two lists of things, each named once, as one; one of the two itself where it holds the other, so that many lots share a list. */
export function united<T>(one: readonly T[], other: readonly T[]): readonly T[] {
  if (one === other || other.length === 0) return one;
  if (one.length === 0) return other;
  const all = [...new Set([...one, ...other])];
  return all.length === one.length ? one : all.length === other.length ? other : all;
}
