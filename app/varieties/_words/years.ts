import type { YearPoint, YearSeries } from "@/components/charts";
import { dateInWords } from "@/lib/display/dates";
import { keptSpan } from "@/lib/display/kept-span";
import { kOfN, percent, percentSpan } from "@/lib/display/numbers";
import { mayHoldSeed } from "@/lib/registry/varieties/holders";
import type { LotOfVariety } from "@/lib/registry/varieties/read-variety";
import { spanShown } from "@/lib/registry/varieties/span-shown";
import type { TestOfVariety } from "@/lib/registry/varieties/tests-of-variety";
import { keptWords } from "./kept-words";

/** The middle of a fuzzy date as a year and its part: 1987-07-02 is 1987.5. */
export function middleYear(first: string | null, last: string | null): number | null {
  if (first === null || last === null) return null;
  const at = (day: string) =>
    Number(day.slice(0, 4)) + (Number(day.slice(5, 7)) - 1) / 12 + (Number(day.slice(8, 10)) - 1) / 365;
  return (at(first) + at(last)) / 2;
}

/** So many lots are each named in the chart; more are joined in the order of the years. */
const namedAtMost = 14;

/**
 * Diversity kept by the year of each lot's harvest. A lot whose plants were not written down is open, never a guess. A few lots stand each
 * by itself, for lots of one variety need not descend from each other.
 */
export function diversityByYear(lots: readonly LotOfVariety[]): readonly YearSeries[] {
  const points = lots.flatMap((lot): YearPoint[] => {
    const year = middleYear(lot.yearFirst, lot.yearLast);
    if (year === null || lot.standing === "clonal" || lot.standing === "uniform") return [];
    const when = dateInWords(lot.year ?? "");
    const shown = spanShown(lot.standing, lot.figures);
    if (shown) {
      const { low, high } = shown.diversityRetained;
      const words = `${lot.number}, ${when}: ${keptSpan(shown.diversityRetained)}`;
      return [{ year, value: null, low, high, grade: "unknown", words }];
    }
    const value = lot.standing === "counted" ? (lot.figures?.diversityRetained ?? null) : null;
    const assumed = (lot.figures?.assumed.length ?? 0) > 0;
    const grade = value === null ? "unknown" : assumed ? "assumed" : "counted";
    return [{ year, value, grade, words: `${lot.number}, ${when}: ${keptWords(lot.standing, value)}` }];
  });
  if (points.length > namedAtMost) return [{ name: "Lots", points }];
  return points.map((point) => ({ name: point.words.split(",")[0] ?? "", points: [point] }));
}

/** Lots that the chart of diversity cannot place, for their year is not known. */
export function withoutYear(lots: readonly LotOfVariety[]): number {
  return lots.filter((lot) => lot.yearFirst === null).length;
}

/** So many lots can be told apart in one chart of germination. */
const linesAtMost = 6;

/** The tested lots that a chart of germination shows: all of few, else those that may hold seed, the newest of them. */
export function lotsToShow(lots: readonly LotOfVariety[], tests: readonly TestOfVariety[]): readonly LotOfVariety[] {
  const tested = new Set(tests.map((test) => test.lotId));
  const all = lots.filter((lot) => tested.has(lot.id));
  if (all.length <= linesAtMost) return all;
  const held = all.filter(mayHoldSeed);
  return [...(held.length > 0 ? held : all)]
    .sort((a, b) => ((a.yearLast ?? "") < (b.yearLast ?? "") ? 1 : -1))
    .slice(0, linesAtMost);
}

/** Germination of each tested lot by the day of its tests, with exact spans. */
export function germinationByYear(tests: readonly TestOfVariety[]): readonly YearSeries[] {
  const byLot = new Map<string, YearPoint[]>();
  for (const test of tests) {
    const year = middleYear(test.onFirst, test.onLast);
    if (year === null) continue;
    const { germination: value, low, high } = test;
    const words = `${test.lot}, ${test.name}, ${dateInWords(test.on)}: ${kOfN(test.normal, test.sown)}, ${percentSpan(low, high)}`;
    byLot.set(test.lot, [...(byLot.get(test.lot) ?? []), { year, value, low, high, grade: "counted", words }]);
  }
  return [...byLot].map(([name, points]) => ({ name, points }));
}

/** Where the upright scale of shares begins: at the quarter below the lowest, so that small losses show. */
export function floorOf(series: readonly YearSeries[]): number {
  const values = series
    .flatMap((each) => each.points.flatMap((point) => [point.value, point.low ?? null]))
    .filter((value): value is number => value !== null);
  const least = values.length === 0 ? 0 : Math.min(...values);
  return least >= 0.75 ? 0.5 : 0;
}

/** "98 %" or what stands in its place. */
export function keptOf(lot: LotOfVariety): string {
  const shown = spanShown(lot.standing, lot.figures);
  if (shown) return keptSpan(shown.diversityRetained);
  return lot.standing === "counted" ? percent(lot.figures?.diversityRetained ?? null) : keptWords(lot.standing, null);
}
