import type { Option } from "@/components/ui";
import type { PollenFinding } from "@/lib/schemas/grow-outs/foreign-pollen";

/** How foreign pollen is found, as its form offers it. */
export const findingOptions: readonly (Option & { readonly value: PollenFinding; readonly note: string })[] = [
  {
    value: "kernels of another colour counted",
    words: "Kernels of another colour, counted",
    note: "they show on the ear in the same season, where the colour is dominant and the variety has none of it",
  },
  {
    value: "off-types in the next sowing",
    words: "Off-types in the next sowing",
    note: "seedlings that show the neighbour’s mark",
  },
  { value: "a neighbour seen in flower", words: "A neighbour seen in flower", note: "at the same time, too near" },
  { value: "a test", words: "A test", note: "a laboratory, or progeny rows" },
  { value: "a guess", words: "A guess", note: "better than nothing, and said to be one" },
];
