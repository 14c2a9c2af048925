import type { Option } from "@/components/ui";
import type { LotOrigin, LotStatus } from "@/lib/schemas/lots/record-lot";

/** The choices of the forms about lots, in a grower's words. */

export const originOptions: readonly (Option & { value: LotOrigin; note?: string })[] = [
  {
    value: "received",
    words: "From somebody's hand",
    note: "a gift, a swap, an inheritance: its parents are not on record here",
  },
  { value: "own grow-out", words: "From my own growing", note: "but the plants it came from are not on record here" },
  { value: "harvest", words: "Harvested from a grow-out that is on record" },
  { value: "purchased", words: "Bought" },
  { value: "found", words: "Found", note: "in a drawer, a shed, at a market: nobody to ask" },
];

export const firstEntryOptions: readonly Option[] = [
  { value: "weighed", words: "weighed: this is in the jar" },
  { value: "received", words: "received: this came in" },
  { value: "harvested", words: "harvested: this was brought in" },
];

export const lineOptions: readonly Option[] = [
  { value: "one", words: "one line: seed of a single plant, all alike" },
  { value: "many", words: "many lines: seed of several plants" },
];

export const treatmentOptions: readonly Option[] = [
  { value: "none", words: "none" },
  { value: "hot water", words: "hot water" },
  { value: "chemical", words: "chemical: dressed seed" },
  { value: "unknown", words: "nobody knows" },
];

export const identityOptions: readonly Option[] = [
  { value: "grown true and seen by the steward", words: "grown true, I saw it" },
  { value: "told by a keeper", words: "its keeper said so" },
  { value: "from a label", words: "it stood on a label" },
  { value: "guessed from seed", words: "guessed by the look of the seed" },
  { value: "unknown", words: "not sure at all" },
];

export const isolationOptions: readonly Option[] = [
  { value: "controlled", words: "controlled: by hand, bag or cage" },
  { value: "isolated", words: "isolated" },
  { value: "partly", words: "partly isolated" },
  { value: "open", words: "open to other pollen" },
  { value: "unknown", words: "nobody knows" },
];

export const statusOptions: readonly (Option & { value: LotStatus })[] = [
  { value: "usable", words: "usable" },
  { value: "share freely", words: "to be shared freely" },
  { value: "circle only", words: "for the circle only" },
  { value: "quarantine", words: "in quarantine" },
  { value: "hold", words: "on hold" },
  { value: "closed", words: "closed, not to be opened" },
  { value: "not for seed", words: "not for seed" },
  { value: "finished", words: "finished, the jar is empty" },
  { value: "dead", words: "dead by a germination test" },
  { value: "discarded", words: "discarded" },
];

export const containerKindOptions: readonly Option[] = ["jar", "tin", "foil", "paper", "bag"].map(same);

export const placeKindOptions: readonly Option[] = [
  ...["cupboard", "cellar", "fridge", "freezer"].map(same),
  { value: "deposit elsewhere", words: "a deposit in another house" },
];

export const containerUnitOptions: readonly Option[] = [
  { value: "g", words: "grams" },
  ...["seeds", "ears", "heads", "pods", "fruits", "packets"].map(same),
];

function same(value: string): Option {
  return { value, words: value };
}
