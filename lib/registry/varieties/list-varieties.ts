import type { Database } from "@/lib/db";
import type { Settings } from "@/lib/schemas/settings";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import { grouped } from "../change-set/grouped";
import { figuresOfAll, type LastTest, type LotFigures } from "../figures/read-figures";
import { seasonRecords } from "../season/read-season-records";
import type { SeasonLot, SeasonVariety } from "../season/records";
import { storedRows } from "../season/stored-rows";
import { waitingByVariety, waitingItems } from "../season/waiting";
import { mayHoldSeed } from "./holders";
import { founderLinesOf, type LineageStanding, lineageStanding } from "./lineage-standing";
import { spanShown } from "./span-shown";

/** A variety as the list shows it. Null is unknown. */
export interface VarietyRow {
  readonly id: string;
  readonly name: string;
  readonly otherNames: readonly string[];
  readonly seedCoat: string | null;
  readonly cropKey: string;
  readonly crop: string;
  readonly aim: string | null;
  /** lots that may hold seed, and all of them */
  readonly lots: number;
  readonly lotsEver: number;
  /** grams of the lots whose balance is known; null where none is; how many are unknown */
  readonly grams: number | null;
  readonly balancesUnknown: number;
  /** places of confirmed holders, and holders that do not count as confirmed */
  readonly places: number;
  readonly holdersNotConfirmed: number;
  /** year of the newest lot that may hold seed */
  readonly newestYear: string | null;
  /** the best last test among the lots that may hold seed */
  readonly bestTest: LastTest | null;
  readonly standing: LineageStanding;
  /** of the newest lot that may hold seed: what would be grown on; `standing` is that lot's */
  readonly diversityRetained: number | null;
  /** what the records allow of it, where a span stands in its place */
  readonly diversitySpan: { readonly low: number; readonly high: number } | null;
  /** several founders, counted as unrelated because nobody wrote how they are related */
  readonly foundersMayBeKin: boolean;
  readonly waiting: number;
}

/** All varieties by name, as rows of the list. Two statements where nothing changed since it was last read. */
export async function listVarieties(db: Database, settings: Settings, today: CivilDay): Promise<VarietyRow[]> {
  const stored = await storedRows(db);
  const figures = await figuresOfAll(db);
  const records = seasonRecords(stored, figures, settings, today);
  const names = grouped(
    stored.otherNames.filter(({ possiblySameAsId }) => possiblySameAsId === null),
    (each) => each.varietyId,
  );
  const lotsOf = grouped(records.lots, (lot) => lot.varietyId);
  const waiting = waitingByVariety(waitingItems(records));
  const lines = founderLinesOf(stored.lots);
  return [...records.varieties.values()].map((variety) => {
    const lots = lotsOf.get(variety.id) ?? [];
    const held = lots.filter(mayHoldSeed);
    const holders = records.holders.get(variety.id) ?? [];
    const confirmed = holders.filter((holder) => holder.confirmed);
    return {
      id: variety.id,
      name: variety.name,
      otherNames: (names.get(variety.id) ?? []).map((each) => each.name),
      seedCoat: variety.seedCoat,
      cropKey: variety.crop.key,
      crop: variety.crop.commonName,
      aim: variety.aim,
      lots: held.length,
      lotsEver: lots.length,
      ...amountOf(held),
      places: confirmed.reduce((sum, holder) => sum + holder.places, 0),
      holdersNotConfirmed: holders.filter((holder) => !holder.confirmed && holder.why !== "said no").length,
      newestYear: newest(held)?.year ?? null,
      bestTest: bestTest(held),
      ...keptOf(variety, held, figures, lines),
      waiting: waiting.get(variety.id) ?? 0,
    };
  });
}

function amountOf(lots: readonly SeasonLot[]) {
  const known = lots.flatMap((lot) => lot.gramsOnHand ?? []);
  return {
    grams: known.length === 0 ? null : known.reduce((sum, grams) => sum + grams, 0),
    balancesUnknown: lots.length - known.length,
  };
}

/** The lot of the latest harvest; of those without a year none is the newest, unless there is no other. */
function newest(lots: readonly SeasonLot[]): SeasonLot | null {
  return lots.reduce<SeasonLot | null>(
    (latest, lot) => (latest === null || (lot.yearLast ?? "") > (latest.yearLast ?? "") ? lot : latest),
    null,
  );
}

function bestTest(lots: readonly SeasonLot[]): LastTest | null {
  return lots.reduce<LastTest | null>((best, { lastTest }) => {
    if (lastTest === null) return best;
    return best === null || lastTest.germination > best.germination ? lastTest : best;
  }, null);
}

function keptOf(
  { crop }: SeasonVariety,
  lots: readonly SeasonLot[],
  figures: ReadonlyMap<string, LotFigures>,
  lines: ReadonlyMap<string, string | null>,
) {
  const of = figures.get(newest(lots)?.id ?? "") ?? null;
  const standing: LineageStanding = crop.clonal
    ? "clonal"
    : of === null
      ? "plants not known"
      : lineageStanding(of, crop.matingSystem, lines);
  return {
    standing,
    diversityRetained: standing === "counted" ? (of?.diversityRetained ?? null) : null,
    diversitySpan: spanShown(standing, of)?.diversityRetained ?? null,
    foundersMayBeKin: standing === "counted" && (of?.founders.length ?? 0) > 1,
  };
}
