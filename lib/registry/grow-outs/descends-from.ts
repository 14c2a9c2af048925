import type { Transaction } from "@/lib/db";
import { grouped } from "../change-set/grouped";

/**
 * Which of the lots come from a grow-out, by however many steps: harvested from it, or from what was sown or mixed of its seed. A cross
 * stays within its crop, so three statements read all that can be on the way.
 */
export async function descendingFrom(
  tx: Transaction,
  cropId: string,
  growOutId: string,
  lotIds: readonly string[],
): Promise<string[]> {
  const ofCrop = { variety: { cropId } };
  const lots = await tx.lot.findMany({ where: ofCrop, select: { id: true, growOutId: true } });
  const sown = grouped(
    await tx.growOutParent.findMany({ where: { growOut: ofCrop }, select: { growOutId: true, lotId: true } }),
    (row) => row.growOutId,
  );
  const mixed = grouped(
    await tx.lotParent.findMany({ where: { lot: ofCrop }, select: { lotId: true, parentLotId: true } }),
    (row) => row.lotId,
  );
  const cameFrom = new Map(lots.map((lot) => [lot.id, lot.growOutId]));
  const known = new Map<string, boolean>();
  const descends = (lotId: string): boolean => {
    const before = known.get(lotId);
    if (before !== undefined) return before;
    // A lot that is looked at already is on the way to itself only where the records are broken: it adds nothing.
    known.set(lotId, false);
    const from = cameFrom.get(lotId) ?? null;
    const parents = [
      ...(from === null ? [] : (sown.get(from) ?? []).map((row) => row.lotId)),
      ...(mixed.get(lotId) ?? []).map((row) => row.parentLotId),
    ];
    const answer = from === growOutId || parents.some(descends);
    known.set(lotId, answer);
    return answer;
  };
  return lotIds.filter(descends);
}
