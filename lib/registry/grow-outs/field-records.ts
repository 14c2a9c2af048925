import type { Moment, Organ, Stage } from "@/lib/schemas/grow-outs/field-kinds";

/*
 * What was counted, pulled and noted in a grow-out. Plain records, so that the browser can work with them too.
 */

/** When something was seen, as it was written, with the first and last day that it can mean. Null: no date. */
export interface Seen {
  readonly id: string;
  readonly on: string | null;
  readonly onFirst: string | null;
  readonly onLast: string | null;
}

interface Entered extends Seen {
  readonly note: string | null;
  readonly stewardId: string | null;
  readonly replacesId: string | null;
}

export interface CountOnRecord extends Entered {
  readonly stage: Stage;
  readonly plants: number;
  /** of crops with separate sexes */
  readonly males: number | null;
  readonly thinnedBy: string | null;
}

export interface PassOnRecord extends Entered {
  readonly stage: string | null;
  /** before or after pollen shed; null: nobody said */
  readonly timing: string | null;
  readonly looked: number | null;
  readonly pulled: number;
  readonly reason: string | null;
  readonly left: number | null;
}

export interface FloweringOnRecord extends Entered {
  readonly organ: Organ;
  readonly moment: Moment;
}

/** The counts and passes of one grow-out that stand. */
export interface FieldEvents {
  readonly counts: readonly CountOnRecord[];
  readonly passes: readonly PassOnRecord[];
}

/** Records that stand: one that was corrected does not, the one that points to it does. */
export function standingOf<R extends { readonly id: string; readonly replacesId: string | null }>(
  rows: readonly R[],
): R[] {
  const replaced = new Set(rows.map((row) => row.replacesId));
  return rows.filter((row) => !replaced.has(row.id));
}

/** Whether one was surely seen before the other: all its possible days lie before. */
export function surelyBefore(one: Pick<Seen, "onFirst" | "onLast">, other: Pick<Seen, "onFirst" | "onLast">): boolean {
  return one.onLast !== null && other.onFirst !== null && one.onLast < other.onFirst;
}

/** The order of days, what has no date first; of one day the order of entry. */
export function inOrderOfDays<R extends Omit<Seen, "on">>(rows: readonly R[]): R[] {
  return rows.toSorted(
    (a, b) =>
      compare(a.onFirst ?? "", b.onFirst ?? "") || compare(a.onLast ?? "", b.onLast ?? "") || compare(a.id, b.id),
  );
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
