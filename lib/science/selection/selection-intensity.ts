import { lnBeta } from "@/lib/science/distributions/beta";
import { normalQuantile } from "@/lib/science/distributions/normal";
import { normalLogarithms } from "@/lib/science/distributions/normal-logarithms";
import { bellBounds } from "@/lib/science/quadrature/bell-bounds";
import { panelPoints } from "@/lib/science/quadrature/gauss-legendre";

/** i = φ(Φ⁻¹(1 − p))/p, the intensity of keeping the best share p of an endless field; 0 at p = 1. Source: Falconer & Mackay 1996, ch. 11. */
export function intensityInfinite(p: number): number {
  if (p >= 1) return 0;
  return Math.exp(normalLogarithms(normalQuantile(p)).density) / p;
}

/**
 * The mean of the k largest of n standard normal draws, 0 at k = n.
 *
 *     i = (n/k) ∫ φ(x)² Φ(x)^(n−k−1) (1 − Φ(x))^(k−1) / B(n − k, k) dx
 *
 * which is (n/k)·E[φ(Φ⁻¹(U))] with U ~ Beta(n − k, k): the sum of the k largest is n ∫ x φ(x) P(fewer than k of the others lie above x) dx,
 * integrated by parts. By Gauss–Legendre over all that counts of the bell, to 1e-9. Checked against tables of Harter 1961, Biometrika 48:151-165.
 */
export function intensityOf(n: number, k: number): number {
  if (k >= n) return 0;
  const logarithm = (x: number) => {
    const { density, below, above } = normalLogarithms(x);
    return 2 * density + (n - k - 1) * below + (k - 1) * above;
  };
  const middle = normalQuantile(Math.min(Math.max((n - k) / n, 1 / (2 * n)), 1 - 1 / (2 * n)));
  const stride = Math.max(1e-4, Math.min(1, 2 / Math.sqrt(n)));
  const top = topOf(logarithm, middle, stride);
  const [from, to] = bellBounds(logarithm, top, stride, [-40, 40]);
  const scale = lnBeta(n - k, k);
  return (
    (n / k) * panelPoints(from, to, 24).reduce((sum, { x, weight }) => sum + weight * Math.exp(logarithm(x) - scale), 0)
  );
}

/** Where a logarithm with one top stands highest, by walking and halving. */
function topOf(logarithm: (x: number) => number, start: number, stride: number): number {
  let x = start;
  let step = stride;
  for (let round = 0; round < 200 && step > 1e-6; round++) {
    const here = logarithm(x);
    if (logarithm(x + step) > here) x += step;
    else if (logarithm(x - step) > here) x -= step;
    else step /= 2;
  }
  return x;
}
