import type { Option } from "@/components/ui";

/** How the seed is put together, and what that does. */
export const bulkedOptions: readonly (Option & { note: string })[] = [
  {
    value: "equal weight",
    words: "equal weight of each",
    note: "the same grams of every plant: each counts alike, whatever it bore",
  },
  { value: "equal seeds", words: "equal seeds of each", note: "the same number of seeds of every plant" },
  {
    value: "kept apart",
    words: "kept apart",
    note: "a bag each, in one lot: equal shares can still be taken, or plants raised of every bag alike",
  },
  {
    value: "all together",
    words: "all together",
    note: "the whole of each: a plant that bore ten times as much counts ten times",
  },
];

export const toldOptions: readonly Option[] = [
  { value: "plants", words: "plants of this grow-out, below" },
  { value: "count", words: "only how many they were" },
];

export const eachOptions: readonly Option[] = [
  { value: "grams", words: "what it weighs" },
  { value: "seeds", words: "how many seeds" },
  { value: "nothing", words: "nothing of each" },
];

export const harvestLabels: Readonly<Record<string, string>> = {
  told: "Which plants gave seed",
  seedParents: "How many plants gave seed",
  bulked: "How the seed is put together",
  each: "What is known of each",
  grams: "Weight in all",
  seeds: "Seeds in all",
  detasselled: "Plants without tassels",
  seedParentsDetasselled: "Seed parents without tassels",
  mouldyPercent: "Mouldy",
  on: "When",
  number: "Lot number",
  holder: "Who holds it",
  newHolder: "Somebody new",
  note: "Note",
  reason: "What was wrong",
};
