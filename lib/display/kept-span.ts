import { effectiveSizeSpan, unknown } from "./numbers";

interface Ends {
  readonly low: number;
  readonly high: number;
}

const blank = "\u00a0";

/**
 * A span of shares (0..1) that follows from incomplete records, in whole percents: "48–95 %", "about 95 %" where both ends round alike. Never
 * more than two figures, never 0 or 100 where it is not exactly that.
 */
export function keptSpan(ends: Ends | null): string {
  if (ends === null) return unknown;
  const [low, high] = [wholePercent(ends.low), wholePercent(ends.high)];
  return low === high ? `about ${low}${blank}%` : `${low}–${high}${blank}%`;
}

function wholePercent(share: number): number {
  if (share <= 0 || share >= 1) return share <= 0 ? 0 : 100;
  return Math.min(99, Math.max(1, Math.round(share * 100)));
}

/** A span of sizes, or one that nothing bounds above: "10–27", "at least 10", "unknown". */
export function sizeSpan(ends: { readonly low: number; readonly high: number | null } | null): string {
  return ends === null ? unknown : effectiveSizeSpan(ends.low, ends.high);
}
