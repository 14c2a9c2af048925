import crops from "./crops.json";

/**
 * A crop's profile: the part of its biology that the numbers need. Percent outcrossing, metres, plants, days, years, seeds per gram.
 * Source: the crop list beside this file; `sources` names for each group of fields the code of its source, with v (verified) or u (not).
 */
export interface CropProfile {
  readonly key: string;
  readonly commonName: string;
  readonly latinName: string | null;
  readonly family: string | null;
  readonly lifeCycle: string | null;
  readonly matingSystem: string | null;
  readonly pollinationVector: string | null;
  readonly outcrossingPctMin: number | null;
  readonly outcrossingPctMax: number | null;
  readonly selfIncompatible: string | null;
  readonly isolationHomeMinM: number | null;
  readonly isolationHomeMaxM: number | null;
  readonly isolationStewardMinM: number | null;
  readonly isolationStewardMaxM: number | null;
  readonly plantsMin: number | null;
  readonly plantsRecommendedMin: number | null;
  readonly plantsRecommendedMax: number | null;
  readonly daysToFlowerMin: number | null;
  readonly daysToFlowerMax: number | null;
  readonly daysToSeedMin: number | null;
  readonly daysToSeedMax: number | null;
  readonly seedLifeYearsMin: number | null;
  readonly seedLifeYearsMax: number | null;
  readonly seedsPerGramMin: number | null;
  readonly seedsPerGramMax: number | null;
  readonly vernalisation: string | null;
  readonly wildRelatives: string | null;
  readonly seedProcessing: string | null;
  readonly cautions: string | null;
  readonly crossingGroup: string | null;
  readonly notes: Readonly<Record<string, string>>;
  readonly sources: string | null;
}

/** The crop list that the registry starts with. */
export function cropList(): readonly CropProfile[] {
  return crops as unknown as readonly CropProfile[];
}

/** The profile of a crop that a steward named and nobody has described yet: nothing is known of it. */
export function emptyProfile(commonName: string): CropProfile {
  return {
    key: commonName,
    commonName,
    latinName: null,
    family: null,
    lifeCycle: null,
    matingSystem: null,
    pollinationVector: null,
    outcrossingPctMin: null,
    outcrossingPctMax: null,
    selfIncompatible: null,
    isolationHomeMinM: null,
    isolationHomeMaxM: null,
    isolationStewardMinM: null,
    isolationStewardMaxM: null,
    plantsMin: null,
    plantsRecommendedMin: null,
    plantsRecommendedMax: null,
    daysToFlowerMin: null,
    daysToFlowerMax: null,
    daysToSeedMin: null,
    daysToSeedMax: null,
    seedLifeYearsMin: null,
    seedLifeYearsMax: null,
    seedsPerGramMin: null,
    seedsPerGramMax: null,
    vernalisation: null,
    wildRelatives: null,
    seedProcessing: null,
    cautions: null,
    crossingGroup: null,
    notes: {},
    sources: null,
  };
}
