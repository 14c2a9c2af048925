import { faultsAmong, notNegativeFault, positiveFault } from "@/lib/science/limits";
import { type Path, type Refusal, refusal } from "@/lib/science/outcome";
import { besselI0Scaled } from "./bessel-i0-scaled";

/** Where the pollen of one plant lands in the plane; metres. */
export type PollenKernel =
  | { readonly model: "2dt"; readonly a: number; readonly b: number }
  | { readonly model: "geometric"; readonly b: number }
  | { readonly model: "nig"; readonly d: number; readonly l: number; readonly lz: number };

/**
 * g(r): the density per m² of one plant's pollen at a distance of r metres, the same in every direction; integrates to 1.
 *
 *     2dt        g = (b − 1)/(π a²) · (1 + r²/a²)^(−b)
 *     geometric  g = (b + 1)(b + 2)/(2π) · (1 + r)^b
 *     nig        g = d² e^lz/(2π) · (q^(−1/2) + p^(1/2))/q · exp(−√(pq)) · I0(l d r),  q = 1 + d² r²,  p = lz² + l²
 *
 * The last is averaged over the directions of the wind; its exponents are joined before they are taken, so that neither overflows.
 * Source: Clark et al. 1999, Ecology 80:1475 (2Dt); Klein et al. 2003, Ecol. Monogr. 73:131 (geometric, NIG).
 */
export function kernelDensity(kernel: PollenKernel, metres: number): number {
  if (kernel.model === "2dt") {
    const { a, b } = kernel;
    return ((b - 1) / (Math.PI * a * a)) * (1 + (metres / a) ** 2) ** -b;
  }
  if (kernel.model === "geometric") {
    const { b } = kernel;
    return (((b + 1) * (b + 2)) / (2 * Math.PI)) * (1 + metres) ** b;
  }
  const { d, l, lz } = kernel;
  const far = d * metres;
  const q = 1 + far * far;
  const p = lz * lz + l * l;
  // √(pq) − l d r without the loss of digits that the plain difference has far away
  const root = Math.sqrt(p * q);
  const exponent = -(p + lz * lz * far * far) / (root + l * far);
  const height = ((d * d) / (2 * Math.PI)) * ((1 / Math.sqrt(q) + Math.sqrt(p)) / q);
  return height * Math.exp(lz + exponent) * besselI0Scaled(l * far);
}

/** The length over which a kernel changes near the plant, in metres: how finely it must be looked at there. */
export function kernelScale(kernel: PollenKernel): number {
  if (kernel.model === "2dt") return kernel.a / Math.max(1, Math.sqrt(kernel.b));
  // The tip of a cone: it is looked at until it counts for nothing.
  if (kernel.model === "geometric") return 0.02 / Math.max(1, -kernel.b);
  return 1 / (kernel.d * (1 + kernel.l + Math.sqrt(kernel.lz ** 2 + kernel.l ** 2)));
}

/** What is wrong with a kernel's parameters: only those that make its mass 1 are taken. */
export function kernelFaults(kernel: PollenKernel, at: Path): Refusal[] {
  if (kernel.model === "2dt") {
    return faultsAmong(positiveFault(at, "a", kernel.a), massFault(at, kernel.b > 1, kernel.b, "b above 1 is needed"));
  }
  if (kernel.model === "geometric") return faultsAmong(massFault(at, kernel.b < -2, kernel.b, "b below −2 is needed"));
  return faultsAmong(
    positiveFault(at, "d", kernel.d),
    notNegativeFault(at, "l", kernel.l),
    positiveFault(at, "lz", kernel.lz),
  );
}

function massFault(at: Path, holds: boolean, b: number, needed: string): Refusal | undefined {
  if (holds && Number.isFinite(b)) return undefined;
  return refusal("no-mass", [...at, "b"], b, "gives a kernel without a whole", needed);
}
