/** Bounds of a share, 0 to 1. */
export interface Interval {
  readonly low: number;
  readonly high: number;
}
