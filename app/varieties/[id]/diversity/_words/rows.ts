import type { DescentPoint } from "@/components/charts";
import type { Column, Row } from "@/components/tables/cells";
import { dateInWords } from "@/lib/display/dates";
import { effectiveSize, percent, plainNumber } from "@/lib/display/numbers";
import { ownKept } from "@/lib/registry/varieties/own-kept";
import type { LotOfVariety, VarietyRead } from "@/lib/registry/varieties/read-variety";
import { founderEquivalents } from "@/lib/science/lineage/founder-equivalents";
import { middleYear } from "../../../_words/years";
import { gradeOf, ownKeptInWords, pointOrSpan, sizeInWords } from "./kept-in-words";

/** The columns of the table of every lot; shares are 0 to 1 in its CSV. */
export const columns: readonly Column[] = [
  { key: "lot", name: "Lot", kind: "words" },
  { key: "year", name: "Year", kind: "words", phone: "aside" },
  { key: "holder", name: "Holder", kind: "words", phone: "none" },
  { key: "own", name: "Its own diversity kept", kind: "span", phoneName: "kept" },
  { key: "foreign", name: "Foreign", kind: "count", phoneName: "foreign" },
  { key: "inbreeding", name: "Inbreeding", kind: "count", phone: "none" },
  { key: "coancestry", name: "Coancestry", kind: "count", phone: "none", apart: true },
  { key: "equivalents", name: "Founder equivalents", kind: "count", phone: "none", apart: true },
  { key: "generations", name: "Generations", kind: "count", phone: "none" },
  { key: "size", name: "Effective size", kind: "count", phoneName: "effective size" },
];

/** The lots of a variety as rows, the newest first. */
export function rowsOf({ lots, people, variety }: Pick<VarietyRead, "lots" | "people" | "variety">): Row[] {
  const newest = [...lots].sort((a, b) => ((a.yearLast ?? "") < (b.yearLast ?? "") ? 1 : -1));
  return newest.map((lot) => rowOf(lot, people, `/varieties/${variety.id}/diversity`));
}

function rowOf(lot: LotOfVariety, people: ReadonlyMap<string, string>, path: string): Row {
  const { figures, standing } = lot;
  const kept = ownKept(figures, standing);
  const none = standing === "clonal" || standing === "uniform" || standing === "lines not known";
  const theta = none ? null : (figures?.coancestry ?? null);
  const like = theta === null || theta < 1e-12 ? null : founderEquivalents(theta);
  const count = (value: number | null, words: string) => ({ kind: "count" as const, words, sort: value });
  const size = figures?.effectiveSize ?? null;
  return {
    id: lot.id,
    cells: {
      lot: { kind: "link", words: lot.number, href: `${path}?lot=${lot.id}` },
      year: { kind: "date", words: lot.year === null ? "unknown" : dateInWords(lot.year), sort: lot.yearFirst },
      holder: lot.holderId === null ? "" : (people.get(lot.holderId) ?? "a steward"),
      own: {
        kind: "span",
        value: kept.value,
        low: kept.low,
        high: kept.high,
        grade: gradeOf(lot, kept),
        figure: ownKeptInWords(lot),
        words: ownKeptInWords(lot),
      },
      foreign: count(figures?.foreignAncestry ?? null, percent(figures?.foreignAncestry ?? null)),
      inbreeding: shares(none ? null : pointOrSpan(figures, "inbreeding")),
      coancestry: shares(none ? null : pointOrSpan(figures, "coancestry")),
      equivalents:
        theta === null
          ? null
          : like === null
            ? { kind: "count", words: "not limited", sort: null }
            : count(like, effectiveSize(like)),
      generations:
        figures?.generations == null ? null : count(figures.generations, plainNumber(figures.generations, 1)),
      size: size === null ? sizeSpan(lot) : count(size, effectiveSize(size)),
    },
  };
}

function sizeSpan({ figures, kind }: LotOfVariety): Row["cells"][string] {
  const span = figures?.span?.effectiveSize ?? null;
  if (span) return { kind: "count", words: sizeInWords(span), sort: null, grade: "assumed" };
  // a founder, a blend or a split was not grown here: there is nothing to know
  return kind === "harvest" ? null : "";
}

function shares(ends: { readonly low: number; readonly high: number } | null): Row["cells"][string] {
  if (ends === null) return null;
  const [low, high] = [plainNumber(ends.low, 3), plainNumber(ends.high, 3)];
  return {
    kind: "count",
    words: low === high ? low : `${low}–${high}`,
    sort: ends.low === ends.high ? ends.low : null,
    grade: ends.low === ends.high ? "counted" : "assumed",
  };
}

/** The lots of the chart: those with a year, of which a figure can be told. */
export function pointsOf({ lots, variety }: Pick<VarietyRead, "lots" | "variety">): DescentPoint[] {
  return lots.flatMap((lot): DescentPoint[] => {
    const year = middleYear(lot.yearFirst, lot.yearLast);
    if (year === null || lot.standing === "clonal" || lot.standing === "uniform") return [];
    const kept = ownKept(lot.figures, lot.standing);
    const foreign = kept.foreign ? `, ${percent(lot.figures?.foreignAncestry ?? null)} of its genes foreign` : "";
    return [
      {
        id: lot.id,
        name: lot.number,
        year,
        ...kept,
        grade: gradeOf(lot, kept),
        words: `${lot.number}, ${dateInWords(lot.year ?? "")}: ${ownKeptInWords(lot)}${foreign}`,
        href: `/varieties/${variety.id}/diversity?lot=${lot.id}`,
      },
    ];
  });
}
