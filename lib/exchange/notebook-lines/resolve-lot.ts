import type { FuzzyDate } from "@/lib/science/dates/fuzzy-date";
import { parseDate } from "@/lib/science/dates/parse-date";
import type { ParentLot, ProposedLot } from "./proposal";
import type { LotReference } from "./reading";

/** Lots that a line can lean on, in the order they were typed, and when the line's own work was done. */
export interface LotsBefore {
  readonly lots: readonly ProposedLot[];
  /** EDTF of the line, or null */
  readonly year: string | null;
  /** what was sown last before this line, for "the same seed" */
  readonly sownLast: readonly ParentLot[];
}

/**
 * The lot that is meant where a line doesn't say: the youngest one that stands before it. `toSow` leaves out harvests of
 * the same year, which were not there yet at sowing. Lots in another holder's hand are never meant.
 */
export function defaultLot(before: LotsBefore, toSow: boolean): ProposedLot | null {
  const now = dateOf(before.year);
  let best: ProposedLot | null = null;
  for (const lot of before.lots) {
    if (lot.kind === "split" || isTooLate(lot, now, toSow)) continue;
    if (best === null || rank(lot) >= rank(best)) best = lot;
  }
  return best;
}

/** The lot that words of the line name, or null where no earlier line has made it. */
export function resolveLot(reference: LotReference, before: LotsBefore, toSow: boolean): ProposedLot | null {
  switch (reference.kind) {
    case "year":
      return lotOfYear(reference.year, before);
    case "last-year": {
      const now = dateOf(before.year);
      if (now === null || now.first.slice(0, 4) !== now.last.slice(0, 4)) return defaultLot(before, toSow);
      return lotOfYear(String(Number(now.first.slice(0, 4)) - 1), before) ?? defaultLot(before, toSow);
    }
    case "old": {
      const held = before.lots.filter((lot) => lot.kind !== "split");
      return held.reduce<ProposedLot | null>(
        (oldest, lot) => (oldest === null || rank(lot) < rank(oldest) ? lot : oldest),
        null,
      );
    }
    case "new":
    case "own":
      return defaultLot(before, toSow);
    case "same": {
      const [only, another] = before.sownLast;
      return only === undefined || another !== undefined
        ? null
        : (before.lots.find((lot) => lot.name === only.lot) ?? null);
    }
    case "whose":
      return lotOfPerson(reference.whose, before.lots);
  }
}

/** An earlier lot whose story shares the words that matter: "the aunt's jar" is "my aunt's jar". */
export function lotOfPerson(whose: string, lots: readonly ProposedLot[]): ProposedLot | null {
  const wanted = tellingWords(whose);
  const shared = (lot: ProposedLot) => tellingWords(lot.person ?? "").some((word) => wanted.includes(word));
  return lots.findLast((lot) => lot.kind !== "split" && lot.person !== null && shared(lot)) ?? null;
}

const COMMON = new Set(
  "the a an my our his her their old jar seed seeds jars tin packet bag lot stock of and at in from garden field house shed cellar kitchen mr mrs miss dear late man lady woman".split(
    " ",
  ),
);

function tellingWords(name: string): string[] {
  const words =
    name
      .toLowerCase()
      .replace(/[’‘]/g, "'")
      .match(/[\p{L}'-]+/gu) ?? [];
  return words.map((word) => word.replace(/(?:'s|s')$/, "")).filter((word) => !COMMON.has(word) && word.length > 1);
}

/** A harvest of that year before a lot of another kind; of two alike the one typed last. */
function lotOfYear(year: string, before: LotsBefore): ProposedLot | null {
  const wanted = dateOf(year);
  if (wanted === null) return null;
  const overlaps = (text: string | null) => {
    const date = dateOf(text);
    return date !== null && date.first <= wanted.last && date.last >= wanted.first;
  };
  const held = before.lots.filter((lot) => lot.kind !== "split");
  const harvested = held.filter((lot) => overlaps(lot.year));
  return (
    harvested.findLast((lot) => lot.kind === "harvest") ??
    harvested.at(-1) ??
    // "the 1990 jar" can be one that came in 1990
    held.findLast((lot) => lot.year === null && overlaps(lot.firstSeen)) ??
    null
  );
}

function isTooLate(lot: ProposedLot, now: FuzzyDate | null, toSow: boolean): boolean {
  const made = dateOf(lot.year ?? lot.firstSeen);
  if (now === null || made === null) return false;
  if (made.first > now.last) return true;
  return toSow && lot.kind === "harvest" && made.first.slice(0, 4) === now.first.slice(0, 4);
}

function rank(lot: ProposedLot): string {
  return dateOf(lot.year ?? lot.firstSeen)?.first ?? "";
}

function dateOf(text: string | null): FuzzyDate | null {
  if (text === null) return null;
  const parsed = parseDate(text);
  return parsed.ok ? parsed.value : null;
}
