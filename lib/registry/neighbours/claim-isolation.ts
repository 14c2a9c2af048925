import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import type { IsolationClaimInput } from "@/lib/schemas/neighbours/isolation-claim";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import { growOutOf } from "../grow-outs/grow-out-of";

/**
 * Stores with lots harvested from a grow-out what is claimed of their isolation, and why: a person's word, which a figure only proposed.
 * Refused: no lot, or a lot that was harvested elsewhere. What stood on a lot before stays in the history.
 */
export async function claimIsolation(
  db: Database,
  actor: Actor,
  growOutId: string,
  { grade, reasons, lotIds }: IsolationClaimInput,
): Promise<Outcome<Performed<{ lots: number }>>> {
  const growOut = await growOutOf(db.read, growOutId);
  if (!growOut.ok) return growOut;
  const title = `Grow-out ${growOut.value.name}: isolation of its lots, ${grade}`;
  return perform(db, actor, { action: "decide", title, reason: reasons }, async (change, tx) => {
    if (lotIds.length === 0)
      return refused(refusal("no-lot", ["lots"], null, "is claimed of no lot", "tick one lot at least"));
    const lots = await tx.lot.findMany({ where: { growOutId }, select: { id: true, sameAsId: true } });
    const own = new Set(lots.map((lot) => lot.sameAsId ?? lot.id));
    const elsewhere = lotIds.filter((id) => !own.has(id));
    if (elsewhere.length > 0) {
      const needed = "tick lots that were harvested from this grow-out";
      return refused(...elsewhere.map((id) => refusal("not-its-lot", ["lots"], id, "came from elsewhere", needed)));
    }
    const patch = { isolationGrade: grade, isolationReasons: reasons };
    const changed = await change.updateMany(
      "Lot",
      lotIds.map((id) => ({ id, patch })),
    );
    change.touch(growOut.value.varietyId);
    return accepted({ lots: changed });
  });
}
