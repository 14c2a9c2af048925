import type { LotKind } from "@/lib/schemas/notebook/kinds";
import type { Mating } from "@/lib/science/crops/mating";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import type { BookedEntry } from "../ledger/balance";

/** What the figures of lots are worked out from. Ids are of any kind, unique among their own. */
export interface FigureRecords {
  readonly varieties: readonly VarietyRecord[];
  readonly lots: readonly LotRecord[];
  /** those that gave a lot, at least */
  readonly growOuts: readonly GrowOutRecord[];
  /** what is known of how founder lots are related; left out: nothing */
  readonly kinships?: readonly KinshipRecord[];
}

/** How two founder lots are related. */
export interface KinshipRecord {
  readonly firstId: string;
  readonly secondId: string;
  /** unrelated, same source, coancestry */
  readonly kind: string;
  readonly coancestry: number | null;
}

export interface VarietyRecord {
  readonly id: string;
  readonly name: string;
  /** of its crop */
  readonly profile: Mating;
  /** kept by division: no lineage figures */
  readonly clonal: boolean;
}

/** A parent lot; share 0..1 of the plants or of the living seeds, null where it is not known. */
export interface ParentRecord {
  readonly id: string;
  readonly share: number | null;
  /** of a lot sown for a cross: what its plants were; null or left out: seed parents and pollen parents alike */
  readonly role?: "seed parent" | "pollen parent" | null;
}

/** What one harvest of a grow-out gave, plant by plant in one order for all its harvests, 0 where a plant gave it nothing. */
export interface HarvestRecord {
  readonly lotId: string;
  readonly seedShares: readonly number[];
}

export interface LotRecord {
  readonly id: string;
  /** the lot number, for people */
  readonly number: string;
  readonly varietyId: string;
  readonly holder: string | null;
  readonly kind: LotKind;
  /** of a harvest */
  readonly growOutId: string | null;
  /** of a blend or split */
  readonly parents: readonly ParentRecord[];
  /** of a founder; null: not known */
  readonly inbreeding: number | null;
  /** of a founder: one line or many; null or left out: not known */
  readonly founderLines?: string | null;
  readonly thousandSeedGrams: number | null;
}

export interface GrowOutRecord {
  readonly id: string;
  readonly name: string;
  readonly varietyId: string;
  readonly parents: readonly ParentRecord[];
  /** alive just before the first rogue pass */
  readonly plantsStanding: number | null;
  /** males among them, without rogues, where the sexes are separate */
  readonly malesStanding: number | null;
  readonly roguedBeforePollen: number | null;
  readonly seedParents: number | null;
  /** one number a seed parent, where the seed of each was kept apart */
  readonly seedShares: "equal" | { readonly cv: number } | readonly number[] | null;
  readonly selfingRate: number | null;
  readonly foreignPollen: number | null;
  /** plants whose tassels were taken before they shed: they stood, and gave no pollen; left out: not known */
  readonly detasselled?: number | null;
  /** how many of the seed parents were such plants */
  readonly seedParentsDetasselled?: number | null;
  /** seed parents of all its harvests together, where there were several and some were only counted; else null or left out */
  readonly seedParentsAtMost?: number | null;
  /** its harvests, each with its own lot; left out: one, or not told of all of them, so that its lots are one pool */
  readonly harvests?: readonly HarvestRecord[];
  /** plants rogued after pollen shed; null or left out: not written */
  readonly roguedAfterPollen?: number | null;
  /** the most that can have stood where nobody counted what stood; null or left out: nothing bounds it */
  readonly mostStanding?: number | null;
}

/** Records of lots by lot id, those of one lot in the order of entry. */
export type ByLot<Record> = ReadonlyMap<string, readonly Record[]>;

/** A germination test, all its replicates and days together. */
export interface TestRecord {
  readonly id: string;
  readonly name: string;
  /** as written */
  readonly date: string;
  readonly first: CivilDay;
  readonly sown: number;
  readonly normal: number;
}

/** All that lots are told by: their lineage, and what lies in the jars. */
export interface AllRecords extends FigureRecords {
  readonly ledger: ByLot<BookedEntry>;
  readonly tests: ByLot<TestRecord>;
}
