/*
 * The words of a harvest, as they are stored.
 */

/** How the seed of several plants is put together. */
export const bulkings = ["equal seeds", "equal weight", "all together", "kept apart"] as const;
export type Bulking = (typeof bulkings)[number];

/** What became of a plant's seed: in the lot, not taken at all, or lost, with why. */
export const fatesOfSeed = [
  "kept",
  "not taken",
  "lost: tag fell off",
  "lost: rotted or mouldy",
  "lost: eaten",
  "lost: tipped in with the food crop",
  "lost: broken open",
] as const;
export type FateOfSeed = (typeof fatesOfSeed)[number];
