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
