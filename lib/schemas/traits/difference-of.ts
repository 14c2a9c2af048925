import { scaleEnds, type TraitDefinition } from "./trait";

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
