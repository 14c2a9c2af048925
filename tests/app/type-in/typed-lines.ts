import type { Fixes, TypedLine } from "@/app/type-in/_lines/typed-line";

/** Lines as typed, with fixes by the line's place. */
export function typed(words: readonly string[], fixes: Readonly<Record<number, Fixes>> = {}): TypedLine[] {
  return words.map((line, place) => ({ id: String(place), words: line, fixes: fixes[place] ?? {} }));
}

export const today = "2026-11-25";

export const notebook = [
  "1994, from my aunt's jar, about 40 plants, kept from 12, came up badly",
  "1996: sowed the 1994 seed, 80 plants, pulled 3 before flowering, kept from 60, the same from each, 350 g",
  "1997 nothing sown",
  "1999 tested the 1996 seed, 18 of 20 came up",
  "2001, the old jar, 25 plants, all eaten by slugs",
];
