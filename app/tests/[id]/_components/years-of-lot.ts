import type { YearSeries } from "@/components/charts";
import { dateInWords } from "@/lib/display/dates";
import { kOfN, percentSpan } from "@/lib/display/numbers";
import type { ReadTest } from "@/lib/registry/germination-tests/read-germination-test";
import { daysBetween } from "@/lib/science/dates/civil-day";
import { normalWord } from "../../_words/reading-in-words";

/** The finished tests of the lot through the years, one series a basis: normal seedlings and sprouted seeds are never one line. */
export function yearsOfLot({ testsOfLot }: ReadTest): YearSeries[] {
  const series = new Map<string, YearSeries["points"][number][]>();
  for (const { name, on, onFirst, onLast, basis, totals, germination } of testsOfLot) {
    if (!germination || totals.stage !== "final") continue;
    const key = normalWord(basis);
    const points = series.get(key) ?? [];
    points.push({
      year: (yearOf(onFirst) + yearOf(onLast)) / 2,
      value: germination.share,
      low: germination.low,
      high: germination.high,
      grade: "counted",
      words: `${name}, ${dateInWords(on)}: ${kOfN(totals.sums.normal ?? 0, totals.sown)}, ${percentSpan(germination.low, germination.high)}`,
    });
    series.set(key, points);
  }
  return [...series].map(([name, points]) => ({ name, points }));
}

/** A day as a year and its part. */
function yearOf(day: string): number {
  const year = day.slice(0, 4);
  return Number(year) + daysBetween(`${year}-01-01`, day) / 366;
}
