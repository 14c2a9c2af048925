import { dayNumber, isCivilDay } from "@/lib/science/dates/civil-day";
import type { WeightedTrait } from "@/lib/science/selection/scored-plant";
import { no, type ScoreValue, yes } from "./score-value";
import type { TraitDefinition } from "./trait";

/**
 * A score as a number that can be compared: a count, measure or step as it is; yes 1 and no 0; a choice 1 where it is among the wanted, else 0; a day by its
 * number, so that differences are days. Null where it cannot be: not looked, a date that is no single day, a category of which nobody said what is wanted.
 */
export function scoreNumber(trait: TraitDefinition, { value, text }: ScoreValue): number | null {
  switch (trait.kind) {
    case "count":
    case "measure":
    case "scale":
      return value;
    case "yes-no":
      return text === yes ? 1 : text === no ? 0 : null;
    case "category":
      if (text === null || trait.wording.wanted.length === 0) return null;
      return trait.wording.wanted.includes(text) ? 1 : 0;
    case "date":
      return text !== null && isCivilDay(text) ? dayNumber(text) : null;
  }
}

/** Which end of a trait is good, as plants are ranked by it; null where nobody said, or neither is. */
export function betterEnd(trait: TraitDefinition): WeightedTrait["better"] | null {
  if (trait.kind === "category") return trait.wording.wanted.length > 0 ? "higher" : null;
  if (trait.direction === "higher" || trait.direction === "lower") return trait.direction;
  return trait.direction === "target" && trait.target !== null ? { target: trait.target } : null;
}
