import { seedCoatColours, seedCoatPatterns } from "@/lib/schemas/varieties/seed-coat-words";

/** The seed coat's patterns and colours. Colours are the tokens `--seed-...`. */
export const coatPatterns = seedCoatPatterns;
export type CoatPattern = (typeof coatPatterns)[number];

export const coatColours = seedCoatColours;
export type CoatColour = (typeof coatColours)[number];

/** The outlines of seeds, by the kind of crop. */
export const seedShapes = ["bean", "kernel", "flat", "round", "long", "angular", "cluster"] as const;
export type SeedShape = (typeof seedShapes)[number];

/** A variety's own mark: the pattern in the colour `second` on the colour `ground`. */
export interface Coat {
  readonly pattern: CoatPattern;
  readonly ground: CoatColour;
  readonly second: CoatColour;
}

/** How dark a colour is where there is only black ink: left white, dotted, or printed full. */
export function tone(colour: CoatColour): "white" | "stippled" | "black" {
  if (["white", "cream", "buff", "yellow", "pink"].includes(colour)) return "white";
  if (["tan", "orange", "green", "slate"].includes(colour)) return "stippled";
  return "black";
}
