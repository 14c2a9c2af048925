/** Seed of single plants that comes to more than this many times the harvest is worth a look. */
export const PLANTS_SEED_FACTOR = 2;
