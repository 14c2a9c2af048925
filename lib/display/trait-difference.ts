import { scaleEnds, type TraitDefinition } from "@/lib/schemas/traits/trait";
import { plainNumber, withUnit } from "./numbers";

/** What a difference of a trait's numbers is told in. */
export interface DifferenceOf {
  readonly unit: string | null;
  /** yes or no, wanted or not: a mean is a share */
  readonly share: boolean;
  /** a scale: differences are points of it */
  readonly scale: readonly [number, number] | null;
}

/** What the differences of a trait's numbers are told in; of dates they are days. */
export function differenceOf(trait: TraitDefinition): DifferenceOf {
  const { kind, unit } = trait;
  return {
    unit: kind === "date" ? "days" : unit,
    share: kind === "yes-no" || kind === "category",
    scale: kind === "scale" ? scaleEnds(trait) : null,
  };
}

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
