import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import type { CorrectLotInput } from "@/lib/schemas/lots/record-lot";
import { accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import { unknownLot } from "../ledger/record-ledger-entry";
import { holderOfLot } from "./holder-of-lot";
import { lotToMove } from "./lot-to-move";
import { moveFaults } from "./status-moves";

/**
 * Puts fields of a lot right, with a reason that is kept; what stood there before stays in its history. The number, the variety and where
 * it came from are not changed here: a lot entered under the wrong one is taken back and entered again.
 */
export async function correctLot(
  db: Database,
  actor: Actor,
  lotId: string,
  input: CorrectLotInput,
): Promise<Outcome<Performed<{ lotId: string }>>> {
  const lot = await db.read.lot.findUnique({ where: { id: lotId } });
  if (!lot) return refused(unknownLot(lotId));
  const { reason, holder: _holder, newHolder: _newHolder, year, ...fields } = input;
  return perform(
    db,
    actor,
    { action: "correct-at-desk", title: `Lot ${lot.number} put right`, reason },
    async (change, tx) => {
      const holder = await holderOfLot(tx, change, input);
      const faults = [
        ...moveFaults(await lotToMove(tx, lot), input.status, input.statusReason),
        ...founderFaults(lot.kind, input),
      ];
      if (faults.length > 0 || !holder.ok) return refused(...(holder.ok ? [] : holder.refusals), ...faults);
      await change.update("Lot", lotId, {
        ...fields,
        holderId: holder.value,
        year: year?.text ?? null,
        yearFirst: year?.first ?? null,
        yearLast: year?.last ?? null,
      });
      change.touch(lot.varietyId);
      return accepted({ lotId });
    },
  );
}

function founderFaults(kind: string, input: CorrectLotInput): Refusal[] {
  if (kind === "founder") return [];
  const needed = "leave it empty: it follows from the parents";
  return (["founderLines", "inbreeding"] as const)
    .filter((field) => input[field] !== null)
    .map((field) => refusal("founder-only", [field], input[field], "is said of founder lots only", needed));
}
