import { betaQuantile } from "@/lib/science/distributions/beta";

/**
 * The value that a Student's t of so many degrees of freedom lies beyond, on either side, with the chance alpha.
 *
 *     x = BetaInv(alpha; ν/2, ½);  t = √(ν (1 − x)/x)
 *
 * Source: Abramowitz & Stegun 1964, Handbook of Mathematical Functions, 26.7.1 with 26.5.27. Example: ν = 9, alpha 0.05: 2.262.
 */
export function twoSidedStudent(alpha: number, degrees: number): number {
  const x = betaQuantile(alpha, degrees / 2, 0.5);
  return Math.sqrt((degrees * (1 - x)) / x);
}
