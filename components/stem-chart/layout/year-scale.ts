import { yearTicks } from "@/components/charts/points";
import type { Generations } from "./generation";

export interface Tick {
  readonly year: number;
  readonly x: number;
}

export interface YearScale {
  readonly width: number;
  readonly pixelsAYear: number;
  readonly ticks: readonly Tick[];
  readonly at: (year: number) => number;
}

/** Years along the picture: all of them in the frame at zoom 1, so many times as wide at another. */
export function yearScale({ lots }: Generations, width: number, zoom: number, small: boolean): YearScale {
  const margin = small ? { left: 26, right: 40 } : { left: 46, right: 104 };
  const first = Math.floor(least(lots.map(({ year, fuzzy }) => Math.min(year, fuzzy?.first ?? year))));
  const last = Math.max(first + 1, most(lots.map(({ year, fuzzy }) => Math.max(year, fuzzy?.last ?? year))) + 0.25);
  const inner = Math.max(60, width - margin.left - margin.right) * zoom;
  const pixelsAYear = inner / (last - first);
  const at = (year: number) => margin.left + (year - first) * pixelsAYear;
  const ticks = yearTicks(first, last, Math.max(2, Math.floor(inner / 74)))
    .filter((year) => year >= first && year <= last + 0.5)
    .map((year) => ({ year, x: at(year) }));
  return { width: margin.left + inner + margin.right, pixelsAYear, ticks, at };
}

function least(values: readonly number[]): number {
  return values.reduce((low, value) => Math.min(low, value), values[0] ?? 2000);
}

function most(values: readonly number[]): number {
  return values.reduce((high, value) => Math.max(high, value), values[0] ?? 2000);
}
