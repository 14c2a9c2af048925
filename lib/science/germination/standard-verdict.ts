import { betaCdf } from "@/lib/science/distributions/beta";

export type Verdict = "above" | "below" | "cannot tell";

export interface StandardVerdict {
  readonly value: number;
  /** the chance that the lot's true germination is at least the standard */
  readonly probabilityAbove: number;
  readonly verdict: Verdict;
}

/** One-sided: sure enough to say so. */
const SURE = 0.95;

/**
 * Whether a lot stands above a standard, as far as its test can tell.
 *
 *     probabilityAbove = P(Beta(x + ½, n − x + ½) ≥ standard);  above at ≥ 0.95, below at ≤ 0.05
 *
 * x of n seeds, standard 0 to 1. Example: 10 of 10 against 0.85: 0.932, cannot tell.
 * Source: Jeffreys posterior of a binomial share, as in Brown, Cai & DasGupta 2001, Stat. Sci. 16:101-133.
 */
export function standardVerdict(x: number, n: number, standard: number): StandardVerdict {
  const probabilityAbove = betaCdf(1 - standard, n - x + 0.5, x + 0.5);
  return { value: standard, probabilityAbove, verdict: verdictOf(probabilityAbove) };
}

function verdictOf(probabilityAbove: number): Verdict {
  if (probabilityAbove >= SURE) return "above";
  return probabilityAbove <= 1 - SURE ? "below" : "cannot tell";
}
