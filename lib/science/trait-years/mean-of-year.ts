import { twoSidedStudent } from "@/lib/science/distributions/student";

/** What the plants of one year say of a trait. */
export interface MeanOfYear {
  readonly plants: number;
  readonly mean: number;
  /** of single plants; null with one plant */
  readonly sd: number | null;
  /** 95 % interval of the mean; null with one plant */
  readonly interval: { readonly low: number; readonly high: number } | null;
  /** the least, the quarters and the greatest of the plants */
  readonly quarters: readonly [number, number, number, number, number];
}

/**
 * The mean of a year's plants with its interval, and how they are spread.
 *
 *     mean ± t(0.975; n − 1)·s/√n;  s² = Σ(x − mean)²/(n − 1)
 *     quarters between the ordered values at 1 + q (n − 1), straight between neighbours
 *
 * In the trait's unit; null where there is no plant. Limits: the interval is of plants of that year and place, not of the variety.
 * Source: Student 1908, Biometrika 6:1-25; quarters Hyndman & Fan 1996, Am. Stat. 50:361 (definition 7).
 */
export function meanOfYear(values: readonly number[]): MeanOfYear | null {
  const n = values.length;
  if (n === 0) return null;
  const mean = values.reduce((sum, value) => sum + value, 0) / n;
  const sorted = [...values].sort((a, b) => a - b);
  const at = (share: number) => {
    const place = share * (n - 1);
    const below = sorted[Math.floor(place)] ?? mean;
    const above = sorted[Math.ceil(place)] ?? below;
    return below + (above - below) * (place - Math.floor(place));
  };
  const quarters = [at(0), at(0.25), at(0.5), at(0.75), at(1)] as const;
  if (n === 1) return { plants: n, mean, sd: null, interval: null, quarters };
  const sd = Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (n - 1));
  const half = (twoSidedStudent(0.05, n - 1) * sd) / Math.sqrt(n);
  return { plants: n, mean, sd, interval: { low: mean - half, high: mean + half }, quarters };
}
