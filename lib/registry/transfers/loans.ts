import type { CivilDay } from "@/lib/science/dates/civil-day";

/** A transfer as far as loans and their returns need it. */
export interface TransferInTime {
  readonly id: string;
  readonly kind: string;
  readonly varietyId: string;
  readonly lotId: string;
  readonly newLotId: string | null;
  readonly fromStewardId: string | null;
  readonly toStewardId: string | null;
  readonly onFirst: CivilDay;
  readonly onLast: CivilDay;
}

/**
 * Which return answers which loan, by the loan's id. A return answers one loan: of its own lot if there is such a one, else the oldest of the
 * variety between the same two hands that nothing has answered yet; never one that was lent later. What came back may be the harvest of
 * what was lent, so that the lot on it is often another.
 */
export function returnsOfLoans<T extends TransferInTime>(transfers: readonly T[]): ReadonlyMap<string, T> {
  const inTime = [...transfers].sort((a, b) => before(a.onFirst, b.onFirst) || before(a.id, b.id));
  const loans = inTime.filter((each) => each.kind === "loan");
  const answered = new Map<string, T>();
  for (const back of inTime.filter((each) => each.kind === "return")) {
    const open = loans.filter((loan) => !answered.has(loan.id) && loan.onFirst <= back.onLast);
    const loan = open.find((each) => sameLot(each, back)) ?? open.find((each) => sameHands(each, back));
    if (loan) answered.set(loan.id, back);
  }
  return answered;
}

/** The lot that was lent, or the lot that it became in the other hand. */
function sameLot(loan: TransferInTime, back: TransferInTime): boolean {
  return back.lotId === loan.lotId || (loan.newLotId !== null && back.lotId === loan.newLotId);
}

function sameHands(loan: TransferInTime, back: TransferInTime): boolean {
  return (
    loan.varietyId === back.varietyId &&
    loan.toStewardId !== null &&
    back.fromStewardId === loan.toStewardId &&
    back.toStewardId === loan.fromStewardId
  );
}

function before(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
