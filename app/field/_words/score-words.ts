import { dayInWords } from "@/lib/display/dates";
import { plainNumber, withUnit } from "@/lib/display/numbers";
import type { ScoreShown } from "@/lib/field/screen-state";
import type { TraitInField } from "@/lib/schemas/field/field-pack";

/** A score in a few letters: "7", "yes", "182 cm", "white". */
export function scoreWords(trait: TraitInField, { value, text }: Pick<ScoreShown, "value" | "text">): string {
  if (text !== null) return trait.kind === "date" ? dayInWords(text) : text;
  if (value === null) return "";
  if (trait.kind === "yes-no") return value === 1 ? "yes" : "no";
  const figure = plainNumber(value, 3);
  return trait.unit === null ? figure : withUnit(figure, trait.unit);
}
