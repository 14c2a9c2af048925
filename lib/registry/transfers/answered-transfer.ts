import type { Transaction } from "@/lib/db";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";

/** A transfer that seed coming in answers. */
export interface Answered {
  readonly id: string;
  readonly lotId: string;
  readonly newLotId: string | null;
}

/** The transfer that a return answers; none is named: null. Refused where there is no such one, or it was of another variety. */
export async function answeredTransfer(
  tx: Transaction,
  transferId: string | null,
  varietyId: string,
): Promise<Outcome<Answered | null>> {
  if (transferId === null) return accepted(null);
  const select = { id: true, lotId: true, newLotId: true, lot: { select: { varietyId: true, number: true } } } as const;
  const found = await tx.transfer.findUnique({ where: { id: transferId }, select });
  if (!found)
    return refused(refusal("unknown", ["answers"], transferId, "is no transfer here", "choose one of the list"));
  const { lot, ...answered } = found;
  if (lot.varietyId !== varietyId) {
    const needed = "choose the variety that was lent; if something else came back, it answers no loan";
    return refused(refusal("of-another-variety", ["variety"], lot.number, "is of another variety", needed));
  }
  return accepted(answered);
}
