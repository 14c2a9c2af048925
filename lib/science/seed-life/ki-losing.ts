import { normalCdf, normalQuantile } from "@/lib/science/distributions/normal";
import { normalLogarithms } from "@/lib/science/distributions/normal-logarithms";

const REACH = 12;
const STEPS_PER_UNIT = 32;

/**
 * The Ki whose viability falls to the part c of its beginning within so many σ: Φ(Ki − deviates) = c·Φ(Ki).
 *
 * c between 0 and 1, deviates above 0. Read from a table of deviates over Ki from −12 to 12, between two entries by the cubic through
 * their slopes (to 1e-8); above it Ki = deviates + Φ⁻¹(c), below it by Newton's method.
 */
export function kiLosing(c: number): (deviates: number) => number {
  const kis = Array.from({ length: 2 * REACH * STEPS_PER_UNIT + 1 }, (_, i) => i / STEPS_PER_UNIT - REACH);
  const later = kis.map((ki) => normalQuantile(c * normalCdf(ki)));
  const deviatesAt = Float64Array.from(kis, (ki, i) => ki - (later[i] as number));
  const kiPerDeviate = Float64Array.from(kis, (ki, i) => {
    const z = later[i] as number;
    return 1 / (1 - c * Math.exp((z * z - ki * ki) / 2));
  });
  const last = kis.length - 1;
  const always = normalQuantile(c);
  return (deviates) => {
    if (!(deviates > (deviatesAt[0] as number))) return byNewton(c, deviates);
    if (deviates >= (deviatesAt[last] as number)) return deviates + always;
    let [low, high] = [0, last];
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if ((deviatesAt[middle] as number) <= deviates) low = middle;
      else high = middle;
    }
    const width = (deviatesAt[high] as number) - (deviatesAt[low] as number);
    const t = (deviates - (deviatesAt[low] as number)) / width;
    const [ki, next] = [kis[low] as number, kis[high] as number];
    const [slope, nextSlope] = [(kiPerDeviate[low] as number) * width, (kiPerDeviate[high] as number) * width];
    const rise = next - ki;
    return ki + t * (slope + t * (3 * rise - 2 * slope - nextSlope + t * (slope + nextSlope - 2 * rise)));
  };
}

/** Far out, on logarithms, which bend one way. */
function byNewton(c: number, deviates: number): number {
  const lnC = Math.log(c);
  let [low, high] = [-1e150, -REACH + 1];
  let ki = lnC / deviates;
  for (let round = 0; round < 200; round++) {
    const after = normalLogarithms(ki - deviates);
    const first = normalLogarithms(ki);
    const gap = after.below - first.below - lnC;
    if (gap < 0) low = ki;
    else high = ki;
    const slope = Math.exp(after.density - after.below) - Math.exp(first.density - first.below);
    const next = ki - gap / slope;
    const inside = next > low && next < high ? next : (Math.max(low, 2 * ki) + high) / 2;
    if (Math.abs(inside - ki) <= 1e-10 * Math.abs(ki)) return inside;
    ki = inside;
  }
  return ki;
}
