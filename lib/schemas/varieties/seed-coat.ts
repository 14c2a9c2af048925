import { z } from "zod";

/** The patterns and colours of a seed-coat mark, in the trade's words. */
export const seedCoatPatterns = [
  "plain",
  "speckle",
  "eye",
  "stripe",
  "two tones",
  "marbled",
  "splash",
  "ring",
] as const;
export const seedCoatColours = [
  "white",
  "cream",
  "buff",
  "tan",
  "brown",
  "black",
  "red",
  "wine",
  "pink",
  "violet",
  "slate",
  "green",
  "yellow",
  "orange",
] as const;

/** A variety's own mark as it was chosen; a variety without one has it drawn from its name. */
export const SeedCoatSchema = z.strictObject({
  pattern: z.enum(seedCoatPatterns, "is no pattern; take one of the list"),
  ground: z.enum(seedCoatColours, "is no colour; take one of the list"),
  second: z.enum(seedCoatColours, "is no colour; take one of the list"),
});

export type SeedCoatChoice = z.infer<typeof SeedCoatSchema>;
