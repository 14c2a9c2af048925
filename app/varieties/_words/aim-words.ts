/** What the keepers aim at, in words and with what follows from it. */
export const aimWords: Readonly<Record<string, { words: string; note: string }>> = {
  "true-to-type": { words: "true to type", note: "rogued to its description, year after year" },
  "broad-and-alive": { words: "broad and alive", note: "its diversity comes before its looks" },
  improved: { words: "improved", note: "chosen towards something better" },
};

/** Who may see a variety. */
export const sensitivityWords: Readonly<Record<string, { words: string; note: string }>> = {
  public: { words: "everybody", note: "may stand in a public list" },
  circle: { words: "the circle", note: "those who share this registry" },
  held: { words: "held back", note: "kept for a community that must be asked first" },
};
