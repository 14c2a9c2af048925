import { z } from "zod";
import { neededChoice, neededWords, optionalWords } from "../varieties/fields";

/** What can stand in a field of a crop's profile. `at least` is the least number allowed. */
export type CropFieldKind =
  | { readonly kind: "number"; readonly unit: string; readonly least: number; readonly most?: number }
  | { readonly kind: "whole"; readonly unit: string; readonly least: number }
  | { readonly kind: "choice"; readonly choices: readonly string[] }
  | { readonly kind: "words" };

const days: CropFieldKind = { kind: "whole", unit: "days", least: 1 };
const metres: CropFieldKind = { kind: "number", unit: "m", least: 0 };
const plants: CropFieldKind = { kind: "whole", unit: "plants", least: 1 };
const years: CropFieldKind = { kind: "number", unit: "years", least: 0 };
const perGram: CropFieldKind = { kind: "number", unit: "seeds per gram", least: 0 };
const outcrossing: CropFieldKind = { kind: "number", unit: "%", least: 0, most: 100 };
const words: CropFieldKind = { kind: "words" };

/** The fields of a profile that a steward may give an own value, in the order in which a page shows them. */
export const cropFields = {
  latinName: words,
  family: words,
  lifeCycle: { kind: "choice", choices: ["annual", "biennial", "perennial"] },
  matingSystem: { kind: "choice", choices: ["outcrossing", "mixed", "selfing", "dioecious", "clonal"] },
  pollinationVector: words,
  outcrossingPctMin: outcrossing,
  outcrossingPctMax: outcrossing,
  selfIncompatible: words,
  isolationHomeMinM: metres,
  isolationHomeMaxM: metres,
  isolationStewardMinM: metres,
  isolationStewardMaxM: metres,
  plantsMin: plants,
  plantsRecommendedMin: plants,
  plantsRecommendedMax: plants,
  daysToFlowerMin: days,
  daysToFlowerMax: days,
  daysToSeedMin: days,
  daysToSeedMax: days,
  seedLifeYearsMin: years,
  seedLifeYearsMax: years,
  seedsPerGramMin: perGram,
  seedsPerGramMax: perGram,
  vernalisation: words,
  wildRelatives: words,
  seedProcessing: words,
  cautions: words,
} as const satisfies Record<string, CropFieldKind>;

export type CropField = keyof typeof cropFields;

export const cropFieldNames = Object.keys(cropFields) as CropField[];

/** The two ends of a range: the first may not lie above the second. */
export const cropRanges: readonly (readonly [CropField, CropField])[] = [
  ["outcrossingPctMin", "outcrossingPctMax"],
  ["isolationHomeMinM", "isolationHomeMaxM"],
  ["isolationStewardMinM", "isolationStewardMaxM"],
  ["plantsRecommendedMin", "plantsRecommendedMax"],
  ["daysToFlowerMin", "daysToFlowerMax"],
  ["daysToSeedMin", "daysToSeedMax"],
  ["seedLifeYearsMin", "seedLifeYearsMax"],
  ["seedsPerGramMin", "seedsPerGramMax"],
];

/** An own value for one field of a crop's profile, with its reason. */
export const CropOverrideSchema = z.strictObject({
  cropId: z.string(),
  field: neededChoice(cropFieldNames),
  value: neededWords("write the value that holds with you"),
  reason: neededWords("write why your value differs from the list's"),
  source: optionalWords,
});

export type CropOverrideInput = z.input<typeof CropOverrideSchema>;
