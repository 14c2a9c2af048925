import type { Database } from "@/lib/db";
import { cautiousKinship } from "../figures/cautious-kinship";
import { groundOfLots } from "../figures/ground-of-lots";
import { readLineage } from "../figures/read-records";

/** How near two lots are kin. */
export interface SharedByLots {
  /** Θ: the chance that a gene drawn from one and a gene drawn from the other are copies of one gene of a founder */
  readonly coancestry: number;
  /** founders may be kin: each figure is the nearest that their records allow */
  readonly atMost: boolean;
  /** θ of each lot alone */
  readonly own: readonly [number, number];
  /** part of the genes of each lot by founder lot number, 0..1 */
  readonly founders: readonly { readonly number: string; readonly parts: readonly [number, number] }[];
}

/**
 * What two lots of one crop share, by the same lineage as their figures, founders as near as what is
 * written of them allows; null where the records make none. One statement.
 */
export async function sharedByLots(
  db: Database,
  cropId: string,
  one: string,
  other: string,
): Promise<SharedByLots | null> {
  const records = await readLineage(db, [cropId]);
  const known = new Set(records.lots.map(({ id }) => id));
  if (!known.has(one) || !known.has(other)) return null;
  const ground = groundOfLots(records, [one, other]);
  if (!ground) return null;
  const [a, b] = ground.lots;
  const cautious = await cautiousKinship(records, [one, other]);
  const atMost = ground.coancestry.some((row, i) =>
    row.some((theta, j) => (cautious?.[i]?.[j] ?? theta) - theta > 1e-12),
  );
  const kinship = atMost && cautious ? cautious : ground.coancestry;
  const [[first, both], [, second]] = kinship as [[number, number], [number, number]];
  const numbers = new Set([...Object.keys(a?.founders ?? {}), ...Object.keys(b?.founders ?? {})]);
  return {
    coancestry: both,
    atMost,
    own: [first, second],
    founders: [...numbers].map((number) => ({
      number,
      parts: [a?.founders[number] ?? 0, b?.founders[number] ?? 0],
    })),
  };
}
