import conditions from "@/lib/science/germination/germination-conditions.json";
import { kindOfCrop } from "@/lib/science/germination/kind-of-crop";
import { type OwnInTable, type OwnOfRow, ownAmong, withOwn } from "@/lib/science/tables/own-in-table";

/** How an official germination test of a kind is set up. Orientation for a home test, which is never official. */
export interface GerminationConditions {
  readonly kind: string;
  /** B between blotters, TB on top of them, T paper towel, S sand or soil, TS on top of it, P covered dish, C and TC with wadding, RB raised cover */
  readonly substrata: readonly string[];
  /** degrees Celsius; "20-30" is 16 hours at 20 and 8 at 30, a semicolon parts what may be chosen */
  readonly temperatureC: string;
  /** days after setting up; null: no first count */
  readonly firstCountDay: number | null;
  readonly finalCountDay: number;
  readonly hardSeedPossible: boolean;
  readonly requirements: string | null;
  readonly freshOrDormant: string | null;
  readonly source: string;
  readonly verified: boolean;
  /** the steward's own values among them */
  readonly own: readonly OwnOfRow[];
}

/**
 * Conditions for a crop of the crop list, or null. A steward's own values stand in their places where `own` has any.
 * Source: 7 CFR 201.58, table 2, edition of 2015.
 */
export function germinationConditions(cropKey: string, own: readonly OwnInTable[] = []): GerminationConditions | null {
  const kind = kindOfCrop(cropKey);
  const row = conditions.rows.find((each) => each.kind === kind);
  if (!row) return null;
  const { temperatureC, firstCountDay, finalCountDay } = row;
  const instead = ownAmong(own, "germination-conditions", row.kind, { temperatureC, firstCountDay, finalCountDay });
  const { source, verified } = conditions;
  return { ...withOwn(row, instead), source, verified, own: instead };
}
