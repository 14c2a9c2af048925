import { exactInterval } from "@/lib/science/binomial/exact-interval";
import type { Interval } from "@/lib/science/binomial/interval";
import { USUAL_CONFIDENCE } from "@/lib/science/germination/germination-test";

// Tests of some dozens of seeds give few different counts, and an exact interval is dear: those worked out are kept.
const kept = new Map<string, Interval>();
const mostKept = 20_000;

/** The exact 95 % interval of the share of normal seedlings among those sown (at least 1), as `exactInterval`. */
export function intervalOfCounts(normal: number, sown: number): Interval {
  const key = `${normal} of ${sown}`;
  const known = kept.get(key) ?? exactInterval(normal, sown, USUAL_CONFIDENCE);
  if (kept.size >= mostKept) kept.clear();
  kept.set(key, known);
  return known;
}
