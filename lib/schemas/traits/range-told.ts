/**
 * The two numbers of a range as a type description tells it ("180 to 220 cm", "4–6", "12,5-14"); null where it tells none, or more than one.
 */
export function rangeTold(allowed: string): readonly [number, number] | null {
  const found = [...allowed.matchAll(/(\d+(?:[.,]\d+)?)\s*(?:to|–|—|-)\s*(\d+(?:[.,]\d+)?)/g)];
  const [only] = found;
  if (found.length !== 1 || only === undefined) return null;
  const [low, high] = [only[1], only[2]].map((text) => Number((text ?? "").replace(",", ".")));
  return low !== undefined && high !== undefined && low < high ? [low, high] : null;
}
