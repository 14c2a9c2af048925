import type { Database } from "@/lib/db";
import type { Settings } from "@/lib/schemas/settings";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import { figuresOfAll } from "../figures/read-figures";
import { seasonRecords } from "../season/read-season-records";
import type { SeasonLot, SeasonRecords, SeasonVariety, StoredPromise, StoredTransfer } from "../season/records";
import { arrivals, isLong } from "../season/rules/quarantine-long";
import { storedRows } from "../season/stored-rows";
import type { Holder } from "../varieties/holders";
import { lastDayOf } from "./due-day";
import { returnsOfLoans } from "./loans";
import { type SharingYear, sharingByYear } from "./sharing-by-year";

/** Seed that is out on loan. */
export interface LoanOut {
  readonly transfer: StoredTransfer;
  readonly promises: readonly StoredPromise[];
  /** the day by which an answer or what was promised is due, as written; null none */
  readonly due: string | null;
  readonly late: boolean;
}

/** A promise that was not kept yet, and the transfer that it went with. */
export interface OpenPromise {
  readonly promise: StoredPromise;
  readonly transfer: StoredTransfer | null;
  readonly late: boolean;
}

/** A lot that came in and waits in quarantine; `since` is not known where no transfer says when it came. */
export interface LotInQuarantine {
  readonly lot: SeasonLot;
  readonly came: StoredTransfer | null;
  readonly long: boolean;
}

/** Who has seed of a variety, in how many places. */
export interface HeldVariety {
  readonly variety: SeasonVariety;
  readonly holders: readonly Holder[];
  /** separate places of holders who count as confirmed */
  readonly places: number;
  readonly confirmed: number;
  /** the last that was heard or seen of any of them */
  readonly last: CivilDay | null;
}

/** All that the page of sharing shows, from one reading of the registry. */
export interface SharingRead {
  readonly records: SeasonRecords;
  readonly lots: ReadonlyMap<string, SeasonLot>;
  readonly loans: readonly LoanOut[];
  readonly promises: readonly OpenPromise[];
  readonly quarantine: readonly LotInQuarantine[];
  readonly held: readonly HeldVariety[];
  readonly years: readonly SharingYear[];
  /** all transfers, the newest first */
  readonly transfers: readonly StoredTransfer[];
}

/** What is out, what was promised, what came in and waits, who holds what. Two statements where nothing changed since it was last read. */
export async function readSharing(db: Database, settings: Settings, today: CivilDay): Promise<SharingRead> {
  return sharingOf(seasonRecords(await storedRows(db), await figuresOfAll(db), settings, today));
}

/** The same from the records of the season. */
export function sharingOf(records: SeasonRecords): SharingRead {
  const lots = new Map(records.lots.map((lot) => [lot.id, lot]));
  const transfers = [...records.transfers].sort((a, b) => before(b.onFirst, a.onFirst) || before(b.id, a.id));
  return {
    records,
    lots,
    loans: loansOut(records),
    promises: openPromises(records),
    quarantine: inQuarantine(records),
    held: heldVarieties(records),
    years: sharingByYear(records.transfers),
    transfers,
  };
}

/** Loans that nothing came back from, and whose promises were not all kept: the longest due first, those without a day last. */
function loansOut({ transfers, promises, today }: SeasonRecords): LoanOut[] {
  const back = returnsOfLoans(transfers);
  const loans = transfers.flatMap((transfer): LoanOut[] => {
    if (transfer.kind !== "loan" || back.has(transfer.id)) return [];
    const given = promises.filter((promise) => promise.transferId === transfer.id);
    const open = given.filter((promise) => promise.keptOn === null);
    if (given.length > 0 && open.length === 0) return [];
    const due = [...open.flatMap((promise) => promise.due ?? []), ...(transfer.replyDue ? [transfer.replyDue] : [])];
    const first = due.sort((a, b) => before(lastDayOf(a) ?? a, lastDayOf(b) ?? b))[0] ?? null;
    return [{ transfer, promises: open, due: first, late: isLate(first, today) }];
  });
  return loans.sort((a, b) => byDue(a.due, b.due) || before(a.transfer.onFirst, b.transfer.onFirst));
}

function openPromises({ transfers, promises, today }: SeasonRecords): OpenPromise[] {
  const byId = new Map(transfers.map((transfer) => [transfer.id, transfer]));
  return promises
    .filter((promise) => promise.keptOn === null)
    .map((promise) => {
      const transfer = byId.get(promise.transferId ?? "") ?? null;
      return { promise, transfer, late: isLate(promise.due, today) };
    })
    .sort((a, b) => byDue(a.promise.due, b.promise.due) || before(a.promise.id, b.promise.id));
}

function inQuarantine({ lots, transfers, today }: SeasonRecords): LotInQuarantine[] {
  const came = new Map(transfers.flatMap((each) => (each.newLotId === null ? [] : [[each.newLotId, each] as const])));
  const since = arrivals(transfers);
  return lots
    .filter((lot) => lot.status === "quarantine")
    .map((lot) => {
      const day = since.get(lot.id);
      return { lot, came: came.get(lot.id) ?? null, long: day !== undefined && isLong(day, today) };
    });
}

/** Varieties of which somebody has, or had, seed: those in no certain place first, then sole copies, then by name. */
function heldVarieties({ varieties, holders }: SeasonRecords): HeldVariety[] {
  return [...varieties.values()]
    .map((variety): HeldVariety => {
      const own = holders.get(variety.id) ?? [];
      const confirmed = own.filter((holder) => holder.confirmed);
      const days = own.flatMap((holder) => holder.last?.day ?? []).sort();
      return {
        variety,
        holders: own,
        places: confirmed.reduce((sum, holder) => sum + holder.places, 0),
        confirmed: confirmed.length,
        last: days.at(-1) ?? null,
      };
    })
    .filter(({ holders: own }) => own.length > 0)
    .sort((a, b) => a.places - b.places || before(a.variety.nameKey, b.variety.nameKey));
}

function isLate(due: string | null, today: CivilDay): boolean {
  const day = due === null ? null : lastDayOf(due);
  return day !== null && day < today;
}

/** Without a day last. */
function byDue(a: string | null, b: string | null): number {
  const [left, right] = [a && lastDayOf(a), b && lastDayOf(b)];
  if (!left || !right) return left === right ? 0 : left ? -1 : 1;
  return before(left, right);
}

function before(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
