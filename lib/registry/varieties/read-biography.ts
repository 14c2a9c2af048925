import type { Database } from "@/lib/db";
import type { Settings } from "@/lib/schemas/settings";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import { type PhotoRead, readPhotosOf } from "../photos/read-photos";
import { checksOfTraits, type HistoryOfTrait, historiesOfTraits } from "../traits/history-of-trait";
import { type PassOfYears, type PossibleCheck, readTraitRows } from "../traits/read-trait-years";
import { type KeeperThroughYears, keepersThroughYears } from "./keepers-through-years";
import { readVariety, type VarietyRead } from "./read-variety";

/** What a variety's biography is told from. */
export interface BiographyRead {
  readonly read: VarietyRead;
  readonly keepers: readonly KeeperThroughYears[];
  /** the villages of its keepers, by steward, where they let them be told */
  readonly villages: ReadonlyMap<string, string>;
  /** of the variety itself, of its lots, grow-outs and tests */
  readonly photos: readonly PhotoRead[];
  /** of each trait by which its plants were scored */
  readonly traits: readonly HistoryOfTrait[];
  /** varieties that were scored by one of them in the same years */
  readonly checks: readonly PossibleCheck[];
  /** rogue passes, by which off-types are counted */
  readonly passes: readonly PassOfYears[];
}

/** How a biography is asked for. */
interface Asked {
  readonly settings: Settings;
  readonly today: CivilDay;
  /** the variety that stood beside it unchanged, by which the weather is taken out of its traits; null: none */
  readonly checkId: string | null;
}

/** Whether a story may leave the circle: its teller agreed, and to more than the circle. */
export function mayLeaveCircle({ consent }: { readonly consent: string | null }): boolean {
  return consent !== null && !/\bcircle\b/i.test(consent);
}

/** The biography of a variety; null where there is no such. Three statements more than the variety's own page. */
export async function readBiography(
  db: Database,
  id: string,
  { settings, today, checkId }: Asked,
): Promise<BiographyRead | null> {
  const read = await readVariety(db, id, settings, today);
  if (!read) return null;
  const keepers = keepersThroughYears(read.lots, read.growOuts);
  const stewards = await db.read.steward.findMany({
    where: { id: { in: keepers.map((keeper) => keeper.stewardId) }, place: { not: null }, placeGrain: { not: "none" } },
    select: { id: true, place: true },
  });
  const villages = new Map(
    stewards.flatMap(({ id: stewardId, place }) => (place ? [[stewardId, place] as const] : [])),
  );
  const rows = await readTraitRows(db, id);
  const traits = rows ? historiesOfTraits(rows, checkId) : [];
  return {
    ...{ read, keepers, villages, traits, checks: checksOfTraits(traits), passes: rows?.passes ?? [] },
    photos: await readPhotosOf(db, { kind: "life", id }),
  };
}
