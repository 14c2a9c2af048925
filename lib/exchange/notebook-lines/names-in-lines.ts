import { monthAt } from "./calendar-words";
import { type Line, low, type Read, words } from "./line";
import { startsNumber } from "./number-words";

/** Words that no name of a person or place goes on over. */
const STOPS = new Set(
  (
    "back away sent brought handed took lent sold swapped passed be eat sow try test grow plant dry keep use sell and but then or in on at for from with to into off out after before until till since when while which who that over across up down behind under between than this last next near by about around " +
    "came come got get kept saved gave given sowed sown grew grown had has have was were is are did do made mixed only again because as it they them he she we i me " +
    "pulled lost threw tested rogued half some most all none nothing no not now later still too also instead"
  ).split(" "),
);
const DETERMINERS = new Set("my our the his her their an a old young dear late great that mr mrs miss dr a".split(" "));
/** People and places that seed comes from. */
const OWNERS = new Set(
  (
    "aunt auntie aunty uncle mother mum mam father dad gran granny grandma grandmother grandad grandpa grandfather great-aunt great-uncle great-grandmother " +
    "neighbour neighbor neighbours neighbors friend friends cousin sister brother nephew niece widow farmer gardener parson priest vicar teacher schoolmaster monk nun nuns monastery " +
    "market swap bank seedbank genebank fair shelf library circle nursery shop seedsman merchant stall auction village next-door allotment allotments convent school mill miller postman lady man woman boy girl family in-laws stranger"
  ).split(" "),
);
const LONGEST = 6;

/** A name after "to" or "with": up to six words that end at a mark, a number or a word that begins something new. */
export function readName(line: Line, at: number): Read<{ name: string }> | null {
  let end = at;
  while (end < at + LONGEST && isNamePart(line, end, end === at)) end += 1;
  // "Osk and Tarn"
  if (end > at && low(line, end) === "and" && isCapital(line, end + 1) && isNamePart(line, end + 1, true)) end += 2;
  // a determiner alone is no name
  return end === at || DETERMINERS.has(low(line, end - 1)) ? null : { end, name: words(line, at, end) };
}

/** A name that seed can come from: somebody's ("my aunt's jar"), kin, a known kind of place, or a word with a capital. */
export function readOwner(line: Line, at: number): Read<{ name: string }> | null {
  const read = readName(line, at);
  if (read === null) return null;
  for (let place = at; place < read.end; place += 1) {
    const token = line.tokens[place];
    if (token === undefined) break;
    if (/(?:'s|s')$/.test(token.low) || OWNERS.has(token.low)) return read;
    const isName = isCapital(line, place) && !DETERMINERS.has(token.low) && monthAt(line, place) === null;
    if (isName && place > 0) return read;
  }
  return null;
}

function isCapital(line: Line, at: number): boolean {
  return /^\p{Lu}/u.test(line.tokens[at]?.text ?? "");
}

function isNamePart(line: Line, at: number, isFirst: boolean): boolean {
  const token = line.tokens[at];
  if (token === undefined || token.kind !== "word") return false;
  if (STOPS.has(token.low) || (!isFirst && startsNumber(line.tokens, at))) return false;
  if (!isFirst && (token.low === "a" || token.low === "an")) return false;
  return !startsNumber(line.tokens, at);
}

/** Up to six words to the end of the clause; null where there are none. */
export function readRest(line: Line, at: number): Read<{ name: string }> | null {
  let end = at;
  while (end < at + LONGEST && ["word", "number", "short-year"].includes(line.tokens[end]?.kind ?? "")) {
    if (["and", "but", "then", "so"].includes(low(line, end))) break;
    end += 1;
  }
  return end === at ? null : { end, name: words(line, at, end) };
}

/** One to three words that are neither numbers nor words that begin something new ("yellow", "tall white"). */
export function readAdjectives(line: Line, at: number): Read<{ name: string }> | null {
  let end = at;
  while (end < at + 3 && isNamePart(line, end, false) && !["ones", "one", "plants", "plant"].includes(low(line, end)))
    end += 1;
  return end === at ? null : { end, name: words(line, at, end) };
}
