import { dateInWords } from "@/lib/display/dates";
import { plainNumber, rounded } from "@/lib/display/numbers";
import { countedInWords } from "@/lib/display/plurals";
import type { Interval } from "@/lib/science/binomial/interval";
import type { ReplicateSpread } from "@/lib/science/germination/replicate-spread";
import type { StandardVerdict } from "@/lib/science/germination/standard-verdict";

/** What was counted, by the basis of a test. Where nobody wrote it down, "came up" says no more than is known. */
export function upWord(basis: string | null): string {
  return basis === "sprouted" ? "sprouted" : basis === "normal seedlings" ? "gave normal seedlings" : "came up";
}

/** The short word of a count for a row of a sheet or table. */
export function normalWord(basis: string | null): string {
  return basis === "sprouted" ? "sprouted" : basis === "normal seedlings" ? "normal seedlings" : "came up";
}

/** A share as seeds in a hundred: whole, but never 0 or 100 where it is not quite that. */
export function inAHundred(share: number): string {
  const whole = rounded(share * 100, 0);
  const isEnd = (whole === 0 && share > 0) || (whole === 100 && share < 1);
  return isEnd ? plainNumber(Math.min(99.9, Math.max(0.1, rounded(share * 100, 1))), 1) : plainNumber(whole);
}

/** "between 68 and 99 in a hundred". */
export function betweenInAHundred({ low, high }: Interval): string {
  return `between ${inAHundred(low)} and ${inAHundred(high)} in a hundred`;
}

/** "18 of 20 came up: between 68 and 99 in a hundred". */
export function testInWords(test: { sown: number; normal: number; basis: string | null; interval: Interval }): string {
  const up = `${plainNumber(test.normal)} of ${plainNumber(test.sown)} ${upWord(test.basis)}`;
  return `${up}: ${betweenInAHundred(test.interval)}`;
}

/** How a test stands to the one before it. */
export function comparedInWords(compared: {
  readonly changed: boolean;
  readonly difference: number;
  readonly interval: Interval;
  readonly earlier: { readonly on: string; readonly sown: number; readonly normal: number };
}): string {
  const { changed, difference, interval, earlier } = compared;
  const before = `${plainNumber(earlier.normal)} of ${plainNumber(earlier.sown)}, ${dateInWords(earlier.on)}`;
  if (!changed) return `It cannot be told from the test before it (${before}).`;
  const [near, far] = [interval.low, interval.high].map(Math.abs).sort((a, b) => a - b) as [number, number];
  const by = `by ${inAHundred(Math.abs(difference))} in a hundred, somewhere between ${inAHundred(near)} and ${inAHundred(far)}`;
  if (difference < 0) return `It has fallen since the test before it (${before}) ${by}.`;
  return `It stands above the test before it (${before}) ${by}: seed that was dormant then, another way of counting, or a mixed-up jar.`;
}

/** How a test stands to the line at which its lot is to be renewed: told with 95 in 100 on its side, so never as a certainty. */
export function standardInWords({ value, verdict }: StandardVerdict): string {
  const line = `${inAHundred(value)} in a hundred`;
  if (verdict === "above") return `Very likely it stands above the line for renewing, ${line}.`;
  if (verdict === "below") return `Very likely it stands below the line for renewing, ${line}: plan a grow-out.`;
  return `Whether it stands above the line for renewing, ${line}, this test cannot tell.`;
}

/** Whether the replicates are alike, by the exact test (or the tolerated range, where their sizes differ). */
export function spreadInWords({ consistent }: Pick<ReplicateSpread, "consistent">, replicates: number): string {
  const all = countedInWords(replicates, "replicate");
  return consistent
    ? `The ${all} are as alike as chance allows.`
    : `The ${all} differ by more than chance explains: a wet corner, a miscount or mixed seed. Test again if you can spare it.`;
}

/** Who is bound by the published table of tolerated ranges. */
export function bindingRuleInWords(): string {
  return "That table binds a laboratory that tests seed for sale in the United States. At home it binds nobody: this page goes by the exact test.";
}
