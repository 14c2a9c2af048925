import { gaussLegendre } from "../quadrature/gauss-legendre";
import { kernelDensity, kernelScale, type PollenKernel } from "./pollen-kernel";
import { distanceTo, type Point, type Rectangle } from "./rectangle";

const points = gaussLegendre(4);
// A panel may be as long as this part of its distance: there the kernels are smooth enough for four points a side.
const nearness = 0.8;

/**
 * ∫ g(|x − u|) du over a rectangle: what plants spread evenly over it send to the place x (pollen for each plant on a m²).
 * Panels are halved until they are short against their distance or the kernel's own scale. To 1e-5 relative.
 */
export function kernelOverRectangle(kernel: PollenKernel, place: Point, rectangle: Rectangle): number {
  // Cut at the place itself, so that the kernel's tip lies at corners.
  return cutAt(rectangle.x, rectangle.width, place.x)
    .flatMap(([x, width]) =>
      cutAt(rectangle.y, rectangle.height, place.y).map(([y, height]) => ({ x, y, width, height })),
    )
    .reduce((sum, part) => sum + overPart(kernel, kernelScale(kernel), place, part), 0);
}

function overPart(kernel: PollenKernel, scale: number, place: Point, part: Rectangle): number {
  const longest = Math.max(part.width, part.height);
  if (longest > nearness * Math.max(distanceTo(place, part), scale)) {
    const [one, other] = halves(part);
    return overPart(kernel, scale, place, one) + overPart(kernel, scale, place, other);
  }
  let sum = 0;
  for (const across of points) {
    const x = part.x + (part.width * (1 + across.x)) / 2;
    for (const up of points) {
      const y = part.y + (part.height * (1 + up.x)) / 2;
      sum += across.weight * up.weight * kernelDensity(kernel, Math.hypot(x - place.x, y - place.y));
    }
  }
  return (sum * part.width * part.height) / 4;
}

function halves(part: Rectangle): readonly [Rectangle, Rectangle] {
  if (part.width >= part.height) {
    const width = part.width / 2;
    return [
      { ...part, width },
      { ...part, x: part.x + width, width },
    ];
  }
  const height = part.height / 2;
  return [
    { ...part, height },
    { ...part, y: part.y + height, height },
  ];
}

function cutAt(from: number, length: number, at: number): readonly (readonly [number, number])[] {
  if (at <= from || at >= from + length) return [[from, length]];
  return [
    [from, at - from],
    [at, from + length - at],
  ];
}
