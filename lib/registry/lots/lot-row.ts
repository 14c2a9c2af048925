import type { LastTest } from "../figures/read-figures";
import type { LineageStanding } from "../varieties/lineage-standing";
import type { SeedCount } from "./live-seeds";

/** A lot as the list shows it. Null is unknown, which is not zero. */
export interface LotRow {
  readonly id: string;
  readonly number: string;
  readonly code: string;
  readonly kind: string;
  readonly varietyId: string;
  readonly variety: string;
  readonly otherNames: readonly string[];
  /** numbers and label codes of other records of the same lot */
  readonly otherNumbers: readonly string[];
  readonly otherCodes: readonly string[];
  /** JSON of the chosen seed coat */
  readonly seedCoat: string | null;
  readonly cropKey: string;
  readonly crop: string;
  readonly holderId: string | null;
  readonly holder: string | null;
  readonly year: string | null;
  readonly yearFirst: string | null;
  readonly yearLast: string | null;
  readonly status: string | null;
  readonly treatment: string | null;
  readonly notes: string | null;
  readonly places: readonly string[];
  readonly grams: number | null;
  readonly thousandSeedGrams: number | null;
  readonly live: SeedCount | null;
  readonly lastTest: LastTest | null;
  /** years that seed of its crop usually lives at most */
  readonly usualLifeYears: number | null;
  readonly diversityRetained: number | null;
  /** what the records allow of it, where a span stands in its place */
  readonly diversitySpan: { readonly low: number; readonly high: number } | null;
  readonly generations: number | null;
  /** whether the diversity can be put in a figure */
  readonly standing: LineageStanding;
}
