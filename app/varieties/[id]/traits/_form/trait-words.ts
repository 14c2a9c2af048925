import type { Option } from "@/components/ui";
import type { TraitKind } from "@/lib/schemas/traits/trait";
import type { TraitScope } from "@/lib/schemas/traits/trait-form";

export const scopeWords: Readonly<Record<TraitScope, string>> = {
  variety: "this variety",
  crop: "every variety of the crop",
  all: "all varieties",
};

export const traitLabels = {
  name: "What is looked at",
  scope: "For which varieties",
  kind: "How it is told of a plant",
  unit: "Unit",
  scaleLow: "Lowest step",
  scaleHigh: "Highest step",
  steps: "What the steps mean",
  choices: "What it may be",
  direction: "Which end is good",
  target: "The value that is aimed at",
  wanted: "Which of them are wanted",
};

export const kindOptions: readonly (Option & { value: TraitKind; note: string })[] = [
  { value: "count", words: "Counted", note: "ears, tillers, fruits: whole numbers, and 0 is a count" },
  { value: "measure", words: "Measured", note: "height in cm, ear length in mm" },
  { value: "scale", words: "Scored on a scale", note: "1 to 9, with words for the steps" },
  { value: "yes-no", words: "Yes, no or not looked", note: "not looked is neither" },
  { value: "category", words: "One of a list", note: "colours or forms that this variety may have" },
  { value: "date", words: "A day", note: "first flower, first ripe fruit; about will do" },
];

/** The answers to "which end is good", in the words of a kind. */
export function directionOptions(kind: TraitKind | null): readonly Option[] {
  const none = { value: "none", words: "neither end" };
  const target = { value: "target", words: "a value between" };
  if (kind === "category") return [{ value: "target", words: "some of them are wanted" }, none];
  if (kind === "yes-no")
    return [{ value: "higher", words: "yes is good" }, { value: "lower", words: "no is good" }, none];
  if (kind === "date")
    return [{ value: "lower", words: "early is good" }, { value: "higher", words: "late is good" }, none];
  return [{ value: "higher", words: "high is good" }, { value: "lower", words: "low is good" }, target, none];
}
