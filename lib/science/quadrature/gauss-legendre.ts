export interface QuadraturePoint {
  readonly x: number;
  readonly weight: number;
}

/**
 * Points and weights of Gauss–Legendre quadrature on −1 to 1: exact for polynomials up to degree 2·points − 1.
 * The points are the roots of the Legendre polynomial, by Newton's method from Tricomi's start.
 * Source: Abramowitz & Stegun 1964, 25.4.29.
 */
export function gaussLegendre(points: number): readonly QuadraturePoint[] {
  return Array.from({ length: points }, (_, index) => {
    let x = Math.cos((Math.PI * (index + 0.75)) / (points + 0.5));
    let slope = 1;
    for (let round = 0; round < 20; round++) {
      const { value, derivative } = legendre(points, x);
      slope = derivative;
      const step = value / derivative;
      x -= step;
      if (Math.abs(step) < 1e-16) break;
    }
    return { x, weight: 2 / ((1 - x * x) * slope * slope) };
  });
}

function legendre(degree: number, x: number): { value: number; derivative: number } {
  let before = 1;
  let value = x;
  for (let n = 2; n <= degree; n++) {
    [before, value] = [value, ((2 * n - 1) * x * value - (n - 1) * before) / n];
  }
  return { value, derivative: (degree * (x * value - before)) / (x * x - 1) };
}

const TWELVE = gaussLegendre(12);

/** Twelve points in each of so many equal panels between two bounds. */
export function panelPoints(from: number, to: number, panels: number): QuadraturePoint[] {
  const half = (to - from) / (2 * panels);
  return Array.from({ length: panels }, (_, panel) => from + (2 * panel + 1) * half).flatMap((middle) =>
    TWELVE.map(({ x, weight }) => ({ x: middle + half * x, weight: half * weight })),
  );
}
