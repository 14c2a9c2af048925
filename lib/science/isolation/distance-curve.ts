import { faultsAmong, finiteFault, notNegativeFault, positiveFault, shareFault } from "@/lib/science/limits";
import { type Path, type Refusal, refusal } from "@/lib/science/outcome";

/** The share of seed from a source of equal size, against its distance in metres. */
export type DistanceCurve =
  | { readonly a: number; readonly b: number; readonly cap: number }
  | { readonly points: readonly { readonly distanceMetres: number; readonly share: number }[] };

/**
 * P(d), 0..1: min(cap, a·d^b), or log-log between measured points: flat before the first, along the last segment beyond the last.
 * Limits: measured curves steepen, so what lies beyond the last point is a guess. Example: faba bean a 0.1628, b −0.6067, cap 0.5: 0.0078 at 150 m.
 */
export function shareAtDistance(curve: DistanceCurve, metres: number): number {
  if ("cap" in curve) return Math.min(curve.cap, curve.a * metres ** curve.b);
  const points = inOrder(curve.points);
  const [first] = points;
  if (first === undefined || metres <= first.distanceMetres) return first?.share ?? 0;
  const next = points.findIndex((point) => point.distanceMetres >= metres);
  const end = next === -1 ? points.length - 1 : next;
  const [from, to] = [points[end - 1], points[end]];
  if (from === undefined || to === undefined) return first.share;
  const slope = Math.log(to.share / from.share) / Math.log(to.distanceMetres / from.distanceMetres);
  return from.share * (metres / from.distanceMetres) ** slope;
}

function inOrder<P extends { readonly distanceMetres: number }>(points: readonly P[]): P[] {
  return [...points].sort((a, b) => a.distanceMetres - b.distanceMetres);
}

/** What is wrong with a curve: points need a distance and a share above 0, each distance once, two of them at least. */
export function curveFaults(curve: DistanceCurve, at: Path): Refusal[] {
  if ("cap" in curve) {
    return faultsAmong(
      notNegativeFault(at, "a", curve.a),
      finiteFault(at, "b", curve.b),
      shareFault(at, "cap", curve.cap),
    );
  }
  const { points } = curve;
  if (points.length < 2) {
    const needed = "two measured points at least, so that there is a line to follow";
    return [refusal("too-few-points", [...at, "points"], points.length, "is too few points", needed)];
  }
  const seen = new Set<number>();
  return points.flatMap(({ distanceMetres, share }, index) => {
    const here = [...at, "points", index];
    const faults = faultsAmong(
      positiveFault(here, "distanceMetres", distanceMetres),
      positiveFault(here, "share", share),
      shareFault(here, "share", share),
    );
    if (seen.has(distanceMetres)) {
      const needed = "one share for each distance";
      faults.push(refusal("distance-twice", [...here, "distanceMetres"], distanceMetres, "stands twice", needed));
    }
    seen.add(distanceMetres);
    return faults;
  });
}
