import type { CropField } from "@/lib/schemas/crops/crop-fields";

/** A field of a profile in a grower's words; `unit` stands behind the value. */
export const cropFieldWords: Readonly<Record<CropField, { name: string; unit?: string }>> = {
  latinName: { name: "Latin name" },
  family: { name: "Family" },
  lifeCycle: { name: "Life cycle" },
  matingSystem: { name: "Mating system" },
  pollinationVector: { name: "Pollen carried by" },
  outcrossingPctMin: { name: "Outcrossing, at least", unit: "%" },
  outcrossingPctMax: { name: "Outcrossing, at most", unit: "%" },
  selfIncompatible: { name: "Own pollen refused" },
  isolationHomeMinM: { name: "Isolation at home, at least", unit: "m" },
  isolationHomeMaxM: { name: "Isolation at home, ample", unit: "m" },
  isolationStewardMinM: { name: "Isolation for keeping, at least", unit: "m" },
  isolationStewardMaxM: { name: "Isolation for keeping, ample", unit: "m" },
  plantsMin: { name: "Floor of plants", unit: "plants" },
  plantsRecommendedMin: { name: "Plants to aim at, from", unit: "plants" },
  plantsRecommendedMax: { name: "Plants to aim at, to", unit: "plants" },
  daysToFlowerMin: { name: "Sowing to flower, from", unit: "days" },
  daysToFlowerMax: { name: "Sowing to flower, to", unit: "days" },
  daysToSeedMin: { name: "Sowing to seed, from", unit: "days" },
  daysToSeedMax: { name: "Sowing to seed, to", unit: "days" },
  seedLifeYearsMin: { name: "Usual life of the seed, from", unit: "years" },
  seedLifeYearsMax: { name: "Usual life of the seed, to", unit: "years" },
  seedsPerGramMin: { name: "Seeds in a gram, from" },
  seedsPerGramMax: { name: "Seeds in a gram, to" },
  vernalisation: { name: "Cold it needs" },
  wildRelatives: { name: "Wild relatives" },
  seedProcessing: { name: "How its seed is won" },
  cautions: { name: "Cautions" },
};

/** Parts of a profile, in the order of the page. */
export const cropParts: readonly { title: string; fields: readonly CropField[] }[] = [
  {
    title: "How it mates",
    fields: [
      "matingSystem",
      "pollinationVector",
      "outcrossingPctMin",
      "outcrossingPctMax",
      "selfIncompatible",
      "wildRelatives",
    ],
  },
  { title: "How many plants", fields: ["plantsMin", "plantsRecommendedMin", "plantsRecommendedMax"] },
  {
    title: "How far from others",
    fields: ["isolationHomeMinM", "isolationHomeMaxM", "isolationStewardMinM", "isolationStewardMaxM"],
  },
  {
    title: "Its time",
    fields: ["lifeCycle", "vernalisation", "daysToFlowerMin", "daysToFlowerMax", "daysToSeedMin", "daysToSeedMax"],
  },
  {
    title: "Its seed",
    fields: [
      "seedLifeYearsMin",
      "seedLifeYearsMax",
      "seedsPerGramMin",
      "seedsPerGramMax",
      "seedProcessing",
      "cautions",
    ],
  },
  { title: "Its name", fields: ["latinName", "family"] },
];
