import type { LotListQuery } from "@/lib/schemas/lots/list-query";
import type { LotRow } from "./lot-row";

/** Shares of germination that the filters name: the lines of the settings. */
export interface RenewalLines {
  readonly renewalPlan: number;
  readonly renewalUrgent: number;
}

/** The value of a filter that asks for what is not known. */
export const notKnown = "unknown";

/** The lots that pass every filter of the query. */
export function filterRows(rows: readonly LotRow[], query: LotListQuery, lines: RenewalLines): LotRow[] {
  const tests: ((row: LotRow) => boolean)[] = [];
  const wanted = (value: string | null, of: (row: LotRow) => string | null) => {
    if (value !== null) tests.push((row) => (value === notKnown ? of(row) === null : of(row) === value));
  };
  wanted(query.variety, (row) => row.varietyId);
  wanted(query.crop, (row) => row.cropKey);
  wanted(query.holder, (row) => row.holderId);
  wanted(query.kind, (row) => row.kind);
  wanted(query.status, (row) => row.status);
  const { place, seed, test } = query;
  if (place === notKnown) tests.push((row) => row.places.length === 0);
  else if (place !== null) tests.push((row) => row.places.includes(place));
  if (seed !== null) tests.push((row) => seedOf(row) === seed);
  if (test === "never") tests.push((row) => row.lastTest === null);
  if (test === "below") tests.push((row) => row.lastTest !== null && row.lastTest.germination < lines.renewalPlan);
  if (test === "urgent") tests.push((row) => row.lastTest !== null && row.lastTest.germination < lines.renewalUrgent);
  if (test === "above") tests.push((row) => row.lastTest !== null && row.lastTest.germination >= lines.renewalPlan);
  return rows.filter((row) => tests.every((passes) => passes(row)));
}

/** Whether seed is on hand: some, none, or nobody knows. */
export function seedOf(row: LotRow): "some" | "none" | "unknown" {
  if (row.grams === null) return "unknown";
  return row.grams > 0 ? "some" : "none";
}
