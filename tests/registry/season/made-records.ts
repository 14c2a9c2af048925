import type { LastTest } from "@/lib/registry/figures/read-figures";
import type { SeasonCrop, SeasonLot, SeasonRecords, SeasonVariety } from "@/lib/registry/season/records";
import { defaultSettings } from "@/lib/schemas/settings";

/** The day on which the tests of the season stand. */
export const today = "2026-03-10";

/** A crop of the tests: its seed usually lives 3 to 5 years, and it wants 40 plants. */
export const crop: SeasonCrop = {
  id: "crop",
  key: "pea",
  commonName: "Pea",
  matingSystem: "selfing",
  clonal: false,
  plantsMin: 40,
  seedLifeYearsMin: 3,
  seedLifeYearsMax: 5,
};

export function madeVariety(patch: Partial<SeasonVariety> = {}): SeasonVariety {
  return { id: "v1", name: "Hollow Pea", nameKey: "hollow pea", seedCoat: null, aim: null, crop, ...patch };
}

export function madeTest(normal: number, sown: number, date = "2026-02-01"): LastTest {
  return { testId: "t", test: "T1", date, germination: normal / sown, low: 0, high: 1, sown, normal };
}

export function madeLot(patch: Partial<SeasonLot> = {}): SeasonLot {
  return {
    id: "l1",
    number: "Quern 1",
    varietyId: "v1",
    holderId: null,
    kind: "founder",
    growOutId: null,
    year: "2025",
    yearFirst: "2025-01-01",
    yearLast: "2025-12-31",
    status: null,
    statusReason: null,
    gramsOnHand: 100,
    entries: 1,
    lastTest: null,
    lastTestFirst: null,
    lastTestLast: null,
    lastInHand: null,
    buildings: [],
    effectiveSize: null,
    diversityRetained: null,
    founderLines: null,
    donorNumber: null,
    ...patch,
  };
}

/** Records with one variety; what is given stands instead. */
export function madeRecords(patch: Partial<SeasonRecords> = {}): SeasonRecords {
  return {
    today,
    settings: defaultSettings,
    varieties: new Map([["v1", madeVariety()]]),
    lots: [],
    growOuts: [],
    scoredPlants: [],
    tests: [],
    words: [],
    matters: [],
    transfers: [],
    promises: [],
    apart: new Set(),
    names: new Map(),
    holders: new Map(),
    ...patch,
  };
}
