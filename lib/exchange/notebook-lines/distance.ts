import { readCount } from "./count";
import { readFraction } from "./fraction";
import { type Line, low, type Read, words } from "./line";
import { isAdjacent } from "./tokens";

/** Metres in each unit of length; foot, yard and mile are exact by the agreement of 1959. */
const METRES: Record<string, number> = {
  m: 1,
  metre: 1,
  metres: 1,
  meter: 1,
  meters: 1,
  km: 1000,
  kilometre: 1000,
  kilometres: 1000,
  kilometer: 1000,
  kilometers: 1000,
  yd: 0.9144,
  yds: 0.9144,
  yard: 0.9144,
  yards: 0.9144,
  ft: 0.3048,
  foot: 0.3048,
  feet: 0.3048,
  mile: 1609.344,
  miles: 1609.344,
};

export interface Distance {
  readonly words: string;
  /** null where a range or words alone were given */
  readonly metres: number | null;
}

/** Reads a distance: "80 m", "about 300 yards", "half a mile", "1/4 mile", "20'". */
export function readDistance(line: Line, at: number): Read<{ distance: Distance }> | null {
  const fraction = readFraction(line, at);
  if (fraction !== null) {
    const place = ["of", "a"].filter((word, index) => low(line, fraction.end + index) === word).length + fraction.end;
    return METRES[low(line, place)] === undefined ? null : found(line, at, place, fraction.value);
  }
  const share = low(line, at) === "half" && low(line, at + 1) === "a" ? 0.5 : low(line, at) === "a" ? 1 : null;
  const place = share === 0.5 ? at + 2 : at + 1;
  if (share !== null && METRES[low(line, place)] !== undefined) return found(line, at, place, share);
  const count = readCount(line, at);
  // 20' is twenty feet
  const isFeet = count !== null && low(line, count.end) === "'" && isAdjacent(line.tokens, count.end);
  if (isFeet && count.count.value !== null) {
    const metres = count.count.value * (METRES.ft ?? 1);
    return { end: count.end + 1, distance: { words: words(line, at, count.end + 1), metres } };
  }
  return count === null || METRES[low(line, count.end)] === undefined
    ? null
    : found(line, at, count.end, count.count.value);
}

function found(line: Line, at: number, unitPlace: number, value: number | null): Read<{ distance: Distance }> {
  const factor = METRES[low(line, unitPlace)] ?? 1;
  const metres = value === null ? null : value * factor;
  return { end: unitPlace + 1, distance: { words: words(line, at, unitPlace + 1), metres } };
}
