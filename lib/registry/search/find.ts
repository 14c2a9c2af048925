import type { Database } from "@/lib/db";
import { editDistance, slipsAllowed } from "./edit-distance";
import { foldWords } from "./fold-words";
import { type FoundKind, foundKinds, type IndexedRecord, type IndexedText } from "./indexed-record";
import { searchIndex } from "./search-index";

/** What a search found, with the words in which it was found. */
export interface Found {
  readonly kind: FoundKind;
  readonly id: string;
  readonly title: string;
  readonly of: string | null;
  readonly page: IndexedRecord["page"];
  /** what the found text is, where it is not the record's own name */
  readonly as: string | null;
  /** the text around the find, where it is not the name */
  readonly excerpt: string | null;
  /** found only by forgiving a slip of the pen */
  readonly meant: boolean;
}

export interface SearchAnswer {
  /** how many of each kind were found in all */
  readonly counts: Readonly<Record<FoundKind, number>>;
  readonly total: number;
  /** best first */
  readonly found: readonly Found[];
}

/** Finds records by the words in their names, codes, stories and notes, in any order; the beginnings of words are enough. */
export async function find(db: Database, written: string, most = 200, only?: FoundKind): Promise<SearchAnswer> {
  return findAmong(await searchIndex(db), written, most, only);
}

const fewFinds = 4;

/** Slips that were counted already, by word and part. */
type Slips = Map<string, number | null>;

interface Scored {
  readonly record: IndexedRecord;
  readonly text: IndexedText;
  readonly score: number;
}

/**
 * The search itself, over records in memory. Every word must be found in one text of a record: whole, as the beginning of a word, inside
 * one, or (in names) with the slips that its length allows. A name outweighs a code, a code outweighs prose.
 */
export function findAmong(
  records: readonly IndexedRecord[],
  written: string,
  most = 200,
  only?: FoundKind,
): SearchAnswer {
  const words = foldWords(written)
    .split(" ")
    .filter((word) => word !== "");
  const counts = Object.fromEntries(foundKinds.map((kind) => [kind, 0])) as Record<FoundKind, number>;
  if (words.length === 0) return { counts, total: 0, found: [] };
  let best = bestOf(records, words, null);
  // Slips are only forgiven where what was written finds next to nothing.
  if (best.size < fewFinds) best = bestOf(records, words, new Map());
  for (const { record } of best.values()) counts[record.kind] += 1;
  const fitting = [...best.values()].filter(({ record }) => only === undefined || record.kind === only);
  fitting.sort(byNearness);
  const found = fitting.slice(0, most).map((each) => foundOf(each, words));
  return { counts, total: best.size, found };
}

/** Each page once, by its best text. */
function bestOf(records: readonly IndexedRecord[], words: readonly string[], slips: Slips | null): Map<string, Scored> {
  const code = words.join("").replace(/[-‐–]/g, "");
  const best = new Map<string, Scored>();
  for (const record of records) {
    for (const text of record.texts) {
      const score = text.as === "label code" ? codeScore(text.folded, code) : textScore(text, words, slips);
      if (score === 0) continue;
      const own = record.kind === "note" || record.kind === "story" ? record.id : record.page.id;
      const key = `${record.kind}:${own}`;
      const before = best.get(key);
      if (!before || score > before.score) best.set(key, { record, text, score });
    }
  }
  return best;
}

/** From this score on the whole name or code was written; from the second on every word begins one of the name. */
const wholeName = 100;
const inName = 25;

/**
 * Nearest first: a whole name or code, then names in which each word begins a word, then the rest. In each the kinds stand in their order, so
 * that a variety comes before its lots and a lot before its tests.
 */
function byNearness(a: Scored, b: Scored): number {
  return (
    nearness(b.score) - nearness(a.score) ||
    foundKinds.indexOf(a.record.kind) - foundKinds.indexOf(b.record.kind) ||
    b.score - a.score ||
    inOrder.compare(a.record.title, b.record.title)
  );
}

function nearness(score: number): number {
  return score >= wholeName ? 2 : score >= inName ? 1 : 0;
}

// "test 2" before "test 10"
const inOrder = new Intl.Collator("en", { numeric: true });

/** A code is read in threes or in one piece; five characters of it are enough. */
function codeScore(folded: string, code: string): number {
  if (folded === code) return 120;
  return code.length >= 5 && folded.startsWith(code) ? 60 : 0;
}

/** 0 where a word is not found; more for whole words and for names. */
function textScore(text: IndexedText, words: readonly string[], slips: Slips | null): number {
  const whole = words.join(" ");
  const weight = text.as === null ? 3 : text.slips ? 2.5 : 1;
  if (text.folded === whole) return 40 * weight;
  let sum = 0;
  let parts: string[] | null = null;
  for (const word of words) {
    const begins = beginsWord(text.folded, word);
    // In a name a word may be found in the middle of another; in prose that finds too much.
    if (begins || (text.slips && text.folded.includes(word))) {
      sum += begins ? 10 : 4;
      continue;
    }
    if (!text.slips || slips === null) return 0;
    parts ??= text.folded.split(/[^\p{L}\p{N}]+/u);
    const fewest = fewestSlips(word, parts, slips);
    if (fewest === null) return 0;
    sum += 3 - fewest;
  }
  return (sum / words.length) * weight * (text.folded.startsWith(whole) ? 1.5 : 1);
}

/** Whether a word of the text begins so. */
function beginsWord(text: string, word: string): boolean {
  for (let at = text.indexOf(word); at >= 0; at = text.indexOf(word, at + 1)) {
    if (at === 0 || !/[\p{L}\p{N}]/u.test(text[at - 1] ?? "")) return true;
  }
  return false;
}

/** The fewest slips by which a word, or the beginning of a longer one, is meant; null where too many. */
function fewestSlips(word: string, parts: readonly string[], known: Slips): number | null {
  const allowed = slipsAllowed(word);
  if (allowed === 0) return null;
  let fewest: number | null = null;
  for (const part of parts) {
    const key = `${word} ${part}`;
    let slips = known.get(key);
    if (slips === undefined) {
      const beginning =
        part.length > word.length ? editDistance(word, part.slice(0, word.length), allowed) : allowed + 1;
      const least = Math.min(editDistance(word, part, allowed), beginning);
      slips = least > allowed ? null : least;
      known.set(key, slips);
    }
    if (slips !== null && (fewest === null || slips < fewest)) fewest = slips;
  }
  return fewest;
}

function foundOf({ record, text }: Scored, words: readonly string[]): Found {
  const meant = text.slips && !words.every((word) => text.folded.includes(word));
  const excerpt = text.as === null || text.as === "label code" ? null : excerptOf(text.words, words);
  const { kind, id, title, of, page } = record;
  return { kind, id, title, of, page, as: text.as, excerpt, meant };
}

/** Some words before and after the first find. */
function excerptOf(text: string, words: readonly string[]): string {
  const line = text.replace(/\s+/g, " ").trim();
  const at = Math.max(0, foldWords(line).indexOf(words[0] ?? ""));
  const start = at < 50 ? 0 : line.lastIndexOf(" ", at - 30) + 1;
  const end = line.length - start <= 150 ? line.length : line.lastIndexOf(" ", start + 140);
  const cut = line.slice(start, end > start ? end : start + 140);
  return `${start > 0 ? "… " : ""}${cut}${start + cut.length < line.length ? " …" : ""}`;
}
