import type { Settings } from "@/lib/schemas/settings";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import type { RowOf } from "../change-set/records";
import type { LastTest, LotFigures } from "../figures/read-figures";
import type { ScoredPlants } from "../plants/scored-not-chosen";
import type { TransferInTime } from "../transfers/loans";
import type { HeldLot, Holder, WordOfHolder } from "../varieties/holders";

/** A crop as far as the season needs it; own values of the steward are in their place. */
export interface SeasonCrop {
  readonly id: string;
  readonly key: string;
  readonly commonName: string;
  readonly matingSystem: string | null;
  readonly clonal: boolean;
  readonly plantsMin: number | null;
  readonly seedLifeYearsMin: number | null;
  readonly seedLifeYearsMax: number | null;
}

export interface SeasonVariety {
  readonly id: string;
  readonly name: string;
  readonly nameKey: string;
  readonly seedCoat: string | null;
  readonly aim: string | null;
  readonly crop: SeasonCrop;
}

export interface SeasonLot extends HeldLot {
  readonly varietyId: string;
  readonly kind: string;
  readonly growOutId: string | null;
  readonly year: string | null;
  readonly statusReason: string | null;
  /** entries in its ledger that stand */
  readonly entries: number;
  readonly lastTest: LastTest | null;
  /** first and last possible day of the last test */
  readonly lastTestFirst: CivilDay | null;
  readonly lastTestLast: CivilDay | null;
  readonly effectiveSize: number | null;
  readonly diversityRetained: number | null;
  /** of a founder: one line or many; null not known */
  readonly founderLines: string | null;
  /** the number that the giver had for it */
  readonly donorNumber: string | null;
}

export interface SeasonGrowOut {
  readonly id: string;
  readonly name: string;
  readonly varietyId: string;
  readonly sown: string | null;
  readonly sownFirst: CivilDay | null;
  readonly sownLast: CivilDay | null;
  readonly stewardId: string | null;
  readonly purpose: string | null;
  readonly plantsStanding: number | null;
  readonly seedParents: number | null;
  readonly outcome: string | null;
}

/** The scored plants of a grow-out that has given no seed and is not over. */
export interface SeasonScoredPlants extends ScoredPlants {
  readonly growOutId: string;
}

/** A test whose last count may still be to come. */
export interface OpenTest {
  readonly id: string;
  readonly name: string;
  readonly lotId: string;
  readonly on: string;
  readonly onFirst: CivilDay;
  readonly onLast: CivilDay;
  readonly finalCountDay: number | null;
  /** how many counts stand, and the last day counted on (0 where a count names no day) */
  readonly counts: number;
  readonly lastCountDay: number | null;
}

/** A question for a person, or a warning that is not closed. */
export interface OpenMatter {
  readonly id: string;
  /** field: what phones brought home of a grow-out and a person has to settle */
  readonly kind: "question" | "warning" | "field";
  readonly sentence: string;
  readonly day: string;
  readonly varietyId: string | null;
  readonly lotId: string | null;
  readonly growOutId: string | null;
  readonly testId: string | null;
}

/** Seed that changed hands, as it is stored; grams where its amount has a weight. */
export interface StoredTransfer extends TransferInTime {
  readonly toWords: string | null;
  readonly on: string;
  readonly amount: number | null;
  readonly unit: string;
  readonly grams: number | null;
  readonly replyDue: string | null;
}

export type StoredPromise = RowOf<"Promise">;

/** What the season takes of a lot's figures. */
export type FiguresForSeason = Pick<LotFigures, "gramsOnHand" | "effectiveSize" | "diversityRetained" | "lastTest">;

/** All that the rules of the season look at. Order of lots: by lot number; of varieties: by name. */
export interface SeasonRecords {
  readonly today: CivilDay;
  readonly settings: Settings;
  readonly varieties: ReadonlyMap<string, SeasonVariety>;
  readonly lots: readonly SeasonLot[];
  readonly growOuts: readonly SeasonGrowOut[];
  readonly scoredPlants: readonly SeasonScoredPlants[];
  readonly tests: readonly OpenTest[];
  readonly words: readonly (WordOfHolder & { readonly varietyId: string })[];
  readonly matters: readonly OpenMatter[];
  readonly transfers: readonly StoredTransfer[];
  readonly promises: readonly StoredPromise[];
  /** pairs of records of which somebody said that they are two lots, by `pairKey` */
  readonly apart: ReadonlySet<string>;
  /** names of stewards; one that was erased is not there */
  readonly names: ReadonlyMap<string, string>;
  /** who holds each variety, by the rule for confirmed holders */
  readonly holders: ReadonlyMap<string, readonly Holder[]>;
}

/** Where the hand goes. */
export type SeasonPlace = "desk" | "shed" | "field";

/** What every item of the season says. `facts` differ by rule. */
export interface WaitingItem<R extends string = string, F = unknown> {
  readonly rule: R;
  readonly place: SeasonPlace;
  /** 0 cannot wait, 1 this season, 2 when there is time */
  readonly urgency: 0 | 1 | 2;
  readonly varietyId: string | null;
  readonly lotId: string | null;
  readonly facts: F;
}
