import type { DifferenceOf } from "@/lib/schemas/traits/difference-of";
import { plainNumber, withUnit } from "./numbers";

/** A difference of means in the trait's own unit, with its sign: "+8.2 cm", "−1.4 days", "+0.6 points", "+12 in 100 plants". */
export function traitDifference(value: number, { unit, share, scale }: DifferenceOf): string {
  const decimals = share ? 0 : Math.abs(value) >= 100 ? 0 : Math.abs(value) >= 1 ? 1 : 2;
  const figure = plainNumber(share ? value * 100 : value, decimals);
  const signed = figure.startsWith("−") || figure === "0" ? figure : `+${figure}`;
  if (share) return withUnit(signed, "in 100 plants");
  if (scale !== null) return withUnit(signed, Math.abs(value) === 1 ? "point" : "points");
  return unit === null ? signed : withUnit(signed, unit);
}

/** A span of them: "+0.4 to +1.6 cm"; ends that read alike stand once. */
export function traitDifferenceSpan(low: number, high: number, of: DifferenceOf): string {
  const [from, to] = [traitDifference(low, of), traitDifference(high, of)];
  if (from === to) return to;
  const bare = from.split("\u00a0")[0] ?? from;
  return `${bare} to ${to}`;
}
