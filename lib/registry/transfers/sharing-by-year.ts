import { grouped } from "../change-set/grouped";
import type { StoredTransfer } from "../season/records";

/** What went from hand to hand in one year. No names: this is what a yearly report tells. */
export interface SharingYear {
  readonly year: string;
  /** by kind, of what went out */
  readonly out: Readonly<Record<string, number>>;
  readonly outAll: number;
  /** different hands that got seed: stewards, and each hand-over to somebody in words alone as one */
  readonly hands: number;
  readonly varieties: number;
  /** grams of what went out, where its amount has a weight */
  readonly grams: number;
  /** hand-overs out whose weight is not known */
  readonly withoutWeight: number;
  /** returns, and seed taken in from outside */
  readonly cameBack: number;
  readonly cameIn: number;
}

/**
 * Transfers by the year of their first possible day, the newest first. Seed that came from outside stands at both ends of one lot and is no
 * seed that went out; a return is both, and is counted as come back alone; a duplicate in a holder's own other building changes no hand.
 */
export function sharingByYear(transfers: readonly StoredTransfer[]): SharingYear[] {
  return [...grouped(transfers, (transfer) => transfer.onFirst.slice(0, 4))]
    .map(([year, own]) => yearOf(year, own))
    .sort((a, b) => (a.year < b.year ? 1 : -1));
}

function yearOf(year: string, own: readonly StoredTransfer[]): SharingYear {
  const out = own.filter((each) => each.kind !== "return" && !fromOutside(each) && !inOneHand(each));
  const kinds = grouped(out, (each) => each.kind);
  const hands = new Set(out.map((each) => each.toStewardId ?? each.id));
  return {
    year,
    out: Object.fromEntries([...kinds].map(([kind, some]) => [kind, some.length])),
    outAll: out.length,
    hands: hands.size,
    varieties: new Set(out.map((each) => each.varietyId)).size,
    grams: out.reduce((sum, each) => sum + (each.grams ?? 0), 0),
    withoutWeight: out.filter((each) => each.grams === null).length,
    cameBack: own.filter((each) => each.kind === "return").length,
    cameIn: own.filter((each) => each.kind !== "return" && fromOutside(each)).length,
  };
}

/** Seed that came from outside the registry: its own lot stands at both ends. */
export function fromOutside({ lotId, newLotId }: Pick<StoredTransfer, "lotId" | "newLotId">): boolean {
  return lotId === newLotId;
}

function inOneHand({ fromStewardId, toStewardId }: StoredTransfer): boolean {
  return fromStewardId !== null && fromStewardId === toStewardId;
}
