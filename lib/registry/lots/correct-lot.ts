import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import type { CorrectLotInput } from "@/lib/schemas/lots/record-lot";
import { accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import { unknownLot } from "../ledger/record-ledger-entry";
import { holderOfLot } from "./holder-of-lot";

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
  return perform(db, actor, { action: "correct", title: `Lot ${lot.number} put right`, reason }, async (change, tx) => {
    const holder = await holderOfLot(tx, change, input);
    const tested = (await tx.germinationTest.count({ where: { lotId } })) > 0;
    const faults = [...statusFaults(lot.status, input, tested), ...founderFaults(lot.kind, input)];
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
  });
}

/** "Dead" needs a test, a hold its reason, and nothing comes back from discarded. */
function statusFaults(was: string | null, input: CorrectLotInput, tested: boolean): Refusal[] {
  const is = input.status;
  if (was === is) return [];
  if (was === "discarded") {
    const needed = "leave it discarded; if that was a mistaken entry, take it back in the history";
    return [refusal("discarded-for-good", ["status"], is, "cannot follow discarded", needed)];
  }
  if (is === "dead" && !tested)
    return [refusal("dead-untested", ["status"], is, "needs a germination test", "test it first, or choose hold")];
  const needsReason = is === "hold" || is === "discarded" || is === "not for seed" || is === "quarantine";
  if (needsReason && input.statusReason === null)
    return [refusal("missing", ["statusReason"], "", "stands here", "say why it stands so")];
  return [];
}

function founderFaults(kind: string, input: CorrectLotInput): Refusal[] {
  if (kind === "founder") return [];
  const needed = "leave it empty: it follows from the parents";
  return (["founderLines", "inbreeding"] as const)
    .filter((field) => input[field] !== null)
    .map((field) => refusal("founder-only", [field], input[field], "is said of founder lots only", needed));
}
