import { type Line, low, phraseEnd, type Read, words } from "./line";
import { readOwner } from "./names-in-lines";
import type { LotReference } from "./reading";
import { readYear } from "./year";

const SEED = "(?:seed|seeds|lot|jar|harvest|crop|stock|packet|tin|batch|ones|year's)";
const NOUNS = new RegExp(`^${SEED}$`);
const LAST_YEAR = [
  "last year's",
  "last years",
  "last year 's",
  "last season's",
  "the year before's",
  "the previous year's",
  "the year before",
];
const OWN = ["my own", "our own", "its own", "own", "home-saved", "home saved", "home-grown", "home"];
const AGES: Record<string, "old" | "new"> = {
  old: "old",
  older: "old",
  oldest: "old",
  original: "old",
  first: "old",
  new: "new",
  newer: "new",
  newest: "new",
  latest: "new",
  fresh: "new",
};

/** Reads which seed is meant: "the 1991 seed", "last year's", "the old jar", "our own seed", "the same jar". */
export function readLotReference(line: Line, at: number): Read<{ lot: LotReference }> | null {
  const start = ["the", "my", "our", "some"].includes(low(line, at)) ? at + 1 : at;
  const last = phraseEnd(line, at, LAST_YEAR);
  if (last !== null) return referred(line, at, nounEnd(line, last) ?? last, { kind: "last-year" });
  const year = readYear(line, start);
  if (year?.edtf !== undefined && year.edtf !== null && !year.relative) {
    const end = nounEnd(line, low(line, year.end) === "'s" ? year.end + 1 : year.end);
    if (end !== null) return referred(line, at, end, { kind: "year", year: year.edtf });
  }
  const own = phraseEnd(line, at, OWN) ?? phraseEnd(line, start, OWN);
  const ownEnd = own === null ? null : nounEnd(line, own);
  if (ownEnd !== null) return referred(line, at, ownEnd, { kind: "own" });
  const same = low(line, start) === "same" ? nounEnd(line, start + 1) : null;
  if (same !== null) return referred(line, at, same, { kind: "same" });
  const age = AGES[low(line, start)];
  const ageEnd = age === undefined ? null : nounEnd(line, start + 1);
  return age === undefined || ageEnd === null ? null : referred(line, at, ageEnd, { kind: age });
}

/** The same, a bare year or "old"/"new", or somebody's: for blends and where a verb has said that seed is meant. */
export function readLooseLotReference(line: Line, at: number): Read<{ lot: LotReference }> | null {
  const strict = readLotReference(line, at);
  if (strict !== null) return strict;
  const start = low(line, at) === "the" ? at + 1 : at;
  const year = readYear(line, start);
  if (year !== null && year.edtf !== null && !year.relative && /^\d{4}/.test(year.edtf)) {
    return referred(line, at, year.end, { kind: "year", year: year.edtf });
  }
  const age = ["old", "new"].find((word) => word === low(line, start));
  if (age === "old" || age === "new") return referred(line, at, start + 1, { kind: age });
  const owner = readOwner(line, at);
  return owner === null ? null : referred(line, at, owner.end, { kind: "whose", whose: owner.name });
}

type Reference = LotReference extends infer Each ? (Each extends LotReference ? Omit<Each, "words"> : never) : never;

function referred(line: Line, at: number, end: number, reference: Reference): Read<{ lot: LotReference }> {
  return { end, lot: { ...reference, words: words(line, at, end) } };
}

function nounEnd(line: Line, at: number): number | null {
  return NOUNS.test(low(line, at)) ? at + 1 : null;
}
