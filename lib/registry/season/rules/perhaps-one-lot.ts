import { grouped } from "../../change-set/grouped";
import { foldName } from "../../names/fold-name";
import type { SeasonLot, SeasonRecords, WaitingItem } from "../records";

export interface PerhapsOneLot {
  /** the record that was entered later */
  readonly other: { readonly id: string; readonly number: string };
  /** the giver's number that both have */
  readonly donorNumber: string;
}

/**
 * Two records of a variety with the giver's same number, in one hand and of years that may be one: perhaps one lot that was entered twice. A
 * person says that they are one, or that they are two; then it is asked no more.
 */
export function perhapsOneLot({ lots, apart }: SeasonRecords): WaitingItem<"perhaps-one-lot", PerhapsOneLot>[] {
  const told = lots.filter(({ donorNumber, kind }) => donorNumber !== null && kind !== "split" && kind !== "blend");
  const alike = grouped(told, ({ varietyId, holderId, donorNumber }) =>
    JSON.stringify([varietyId, holderId, foldName(donorNumber ?? "")]),
  );
  return [...alike.values()].flatMap((group) =>
    pairs(group)
      .filter(([one, other]) => mayBeOneYear(one, other) && !apart.has(pairKey(one.id, other.id)))
      .map(([one, other]) => ({
        rule: "perhaps-one-lot" as const,
        place: "desk" as const,
        urgency: 2 as const,
        varietyId: one.varietyId,
        lotId: one.id,
        facts: { other: { id: other.id, number: other.number }, donorNumber: one.donorNumber ?? "" },
      })),
  );
}

/** One key for two records, whichever comes first. */
export function pairKey(one: string, other: string): string {
  return one < other ? `${one} ${other}` : `${other} ${one}`;
}

function pairs(lots: readonly SeasonLot[]): (readonly [SeasonLot, SeasonLot])[] {
  const inOrder = [...lots].sort((a, b) => (a.id < b.id ? -1 : 1));
  return inOrder.flatMap((one, place) => inOrder.slice(place + 1).map((other) => [one, other] as const));
}

/** A year that nobody wrote may be any. */
function mayBeOneYear(one: SeasonLot, other: SeasonLot): boolean {
  if (one.yearFirst === null || one.yearLast === null || other.yearFirst === null || other.yearLast === null)
    return true;
  return one.yearFirst <= other.yearLast && other.yearFirst <= one.yearLast;
}
