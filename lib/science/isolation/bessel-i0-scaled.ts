/**
 * e^(−x) I0(x) for x ≥ 0: the modified Bessel function of order 0, scaled so that it never overflows. To 1e-14 relative.
 * Power series to x = 30 (all terms positive), the asymptotic series beyond. Source: Abramowitz & Stegun 1964, 9.6.12 and 9.7.1.
 */
export function besselI0Scaled(x: number): number {
  return x <= 30 ? series(x) : asymptotic(x);
}

function series(x: number): number {
  const quarter = (x * x) / 4;
  let term = 1;
  let sum = 1;
  for (let k = 1; term > sum * 1e-17; k++) {
    term *= quarter / (k * k);
    sum += term;
  }
  return Math.exp(-x) * sum;
}

function asymptotic(x: number): number {
  let term = 1;
  let sum = 1;
  for (let k = 1; k < 40; k++) {
    const next = (term * (2 * k - 1) ** 2) / (8 * x * k);
    if (next >= term || next < sum * 1e-17) break;
    term = next;
    sum += term;
  }
  return sum / Math.sqrt(2 * Math.PI * x);
}
