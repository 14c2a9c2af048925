import type { ScoreValue } from "@/lib/schemas/traits/score-value";
import { scaleEnds, type TraitDefinition } from "@/lib/schemas/traits/trait";
import { dateInWords } from "./dates";
import { plainNumber, withUnit } from "./numbers";
import { listed } from "./plurals";

/** A score as it is read: "180 cm", "7, strong", "yes", "12 July 2024". The step of a scale and yes or no carry their own words. */
export function scoreInWords(trait: TraitDefinition, { value, text }: ScoreValue): string {
  if (text !== null) {
    if (trait.kind === "date") return dateInWords(text);
    const said = trait.kind === "yes-no" ? trait.wording.steps[text] : undefined;
    return said === undefined ? text : `${text}, ${said}`;
  }
  if (value === null) return "";
  const figure = plainNumber(value, 3);
  if (trait.unit !== null) return withUnit(figure, trait.unit);
  const said = trait.kind === "scale" ? trait.wording.steps[String(value)] : undefined;
  return said === undefined ? figure : `${figure}, ${said}`;
}

/** How a trait is told: "1 to 9", "in cm", "yes or no", "one of white, cream". */
export function traitKindInWords(trait: TraitDefinition): string {
  switch (trait.kind) {
    case "count":
      return "counted";
    case "measure":
      return trait.unit === null ? "measured, unit not said" : `measured in ${trait.unit}`;
    case "scale":
      return `scored ${scaleEnds(trait).join(" to ")}`;
    case "yes-no":
      return "yes, no or not looked";
    case "category":
      return trait.wording.choices.length === 0 ? "told in words" : `one of ${listed(trait.wording.choices, "or")}`;
    case "date":
      return "told as a day";
  }
}

/** Which end of a trait is good. */
export function directionInWords(trait: TraitDefinition): string {
  const { direction, kind, target, unit, wording } = trait;
  if (direction === null) return "which end is good is not said";
  if (direction === "none") return "neither end is good or bad";
  if (direction === "target") {
    if (kind === "category") return `wanted: ${listed(wording.wanted, "or")}`;
    if (target === null) return "a value between is aimed at";
    return `${unit === null ? plainNumber(target, 3) : withUnit(plainNumber(target, 3), unit)} is aimed at`;
  }
  const [high, low] = { "yes-no": ["yes", "no"], date: ["late", "early"] }[kind as string] ?? ["high", "low"];
  return `${direction === "higher" ? high : low} is good`;
}

/** What the steps of a scale, or yes and no, mean: "1 weak, 9 strong". Empty where nobody said. */
export function stepsInWords(trait: TraitDefinition): string {
  return Object.entries(trait.wording.steps)
    .map(([step, said]) => `${step} ${said}`)
    .join(", ");
}
