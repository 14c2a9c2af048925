import { compareCodePoints } from "@/lib/science/code-point-order";
import { grouped } from "../change-set/grouped";
import type {
  AllRecords,
  ByLot,
  FigureRecords,
  GrowOutRecord,
  KinshipRecord,
  LotRecord,
  ParentRecord,
} from "./records";

/**
 * Records of which several are one lot, read as one: the leading record stands, with the ledger entries and tests of all, and what was sown,
 * mixed or parted of any of them was of it. What is said of
 * the lot itself, its parentage first of all, is what the leading record says. Nothing is rewritten; where no record points to another, the
 * same comes back.
 * @param leading the id of the leading record, by that of each other
 */
export function asOneLot<R extends FigureRecords & Partial<AllRecords>>(
  records: R,
  leading: ReadonlyMap<string, string>,
): R {
  if (leading.size === 0) return records;
  const led = (id: string) => leading.get(id) ?? id;
  const from = <Row extends LotRecord | GrowOutRecord>(row: Row): Row =>
    row.parents.some(({ id }) => leading.has(id)) ? { ...row, parents: together(row.parents, led) } : row;
  return {
    ...records,
    lots: records.lots.filter(({ id }) => !leading.has(id)).map(from),
    growOuts: records.growOuts
      .map(from)
      .map(
        (growOut): GrowOutRecord =>
          growOut.harvests
            ? { ...growOut, harvests: growOut.harvests.map((harvest) => ({ ...harvest, lotId: led(harvest.lotId) })) }
            : growOut,
      ),
    ...(records.kinships ? { kinships: kinshipsOfLots(records.kinships, led) } : {}),
    ...(records.ledger ? { ledger: underLeading(records.ledger, leading) } : {}),
    ...(records.tests ? { tests: underLeading(records.tests, leading) } : {}),
  };
}

/** What was recorded of any record of a lot stands under the one that leads, in the order of entry. */
function underLeading<Row extends { readonly id: string }>(
  rows: ByLot<Row>,
  leading: ReadonlyMap<string, string>,
): ByLot<Row> {
  const under = new Map(rows);
  for (const [id, first] of leading) {
    const own = rows.get(id);
    if (!own) continue;
    under.delete(id);
    under.set(
      first,
      [...(under.get(first) ?? []), ...own].sort((a, b) => compareCodePoints(a.id, b.id)),
    );
  }
  return under;
}

/** Two records of one lot among the parents are one parent; its share is the sum, unknown where one is. */
export function together(parents: readonly ParentRecord[], led: (id: string) => string): ParentRecord[] {
  const byLot = grouped(parents, ({ id }) => led(id));
  return [...byLot].map(([id, own]) => ({
    id,
    share: own.some(({ share }) => share === null) ? null : own.reduce((sum, { share }) => sum + (share ?? 0), 0),
    ...roleOf(own),
  }));
}

/** One lot on both sides of a cross is no cross. */
function roleOf(own: readonly ParentRecord[]): Pick<ParentRecord, "role"> {
  const [first] = own;
  if (!first?.role) return {};
  return { role: own.every(({ role }) => role === first.role) ? first.role : null };
}

/** What was recorded of two founders holds for the lots that they are read as: once a pair, the earliest word; of one lot to itself nothing. */
function kinshipsOfLots(kinships: readonly KinshipRecord[], led: (id: string) => string): KinshipRecord[] {
  const byPair = new Map<string, KinshipRecord>();
  for (const kinship of kinships) {
    const [firstId, secondId] = [led(kinship.firstId), led(kinship.secondId)];
    const pair = [firstId, secondId].sort().join(" ");
    if (firstId !== secondId && !byPair.has(pair)) byPair.set(pair, { ...kinship, firstId, secondId });
  }
  return [...byPair.values()];
}
