import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import type { Database, Transaction } from "@/lib/db";
import type { SplitInput } from "@/lib/schemas/lots/blend-lots";
import { accepted, type Outcome, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import type { ChangeWriter } from "../change-set/writer";
import { placeOf } from "../containers/record-container";
import { unknownLot } from "../ledger/record-ledger-entry";
import { holderOfLot } from "./holder-of-lot";
import { newLabelCode } from "./new-label-code";
import { type WrittenSplit, writeSplit } from "./write-split";

/**
 * Parts a lot: some of its seed goes under a number of its own, with the same holder or another, into a container if one is named. Seed
 * that is given or lent with what was told of it is a transfer, which parts the lot by itself.
 * Refused: what `writeSplit` refuses; a holder who is no steward here.
 */
export async function splitLot(
  db: Database,
  actor: Actor,
  lotId: string,
  input: SplitInput,
): Promise<Outcome<Performed<WrittenSplit>>> {
  const lot = await db.read.lot.findUnique({ where: { id: lotId }, select: { number: true } });
  if (!lot) return refused(unknownLot(lotId));
  const operation = { action: "desk" as const, title: `Lot ${lot.number}: part of it`, reason: input.reason };
  return perform(db, actor, operation, async (change, tx) => {
    const holder = await holderOfLot(tx, change, input);
    const split = await writeSplit(change, tx, {
      lotId,
      amount: input.amount,
      unit: input.unit,
      on: input.on,
      number: input.number,
      holderId: holder.ok ? holder.value : null,
      reason: input.reason,
      override: input.override,
      stewardId: actor.stewardId,
      notes: input.notes,
    });
    if (!holder.ok || !split.ok)
      return refused(...(holder.ok ? [] : holder.refusals), ...(split.ok ? [] : split.refusals));
    change.title = `Lot ${lot.number}: part of it as lot ${split.value.number}`;
    await writeContainer(change, tx, split.value.lotId, holder.value, input);
    return accepted(split.value);
  });
}

/** The container that it goes into, where one or its place was named. */
async function writeContainer(
  change: ChangeWriter,
  tx: Transaction,
  lotId: string,
  holderId: string | null,
  { container, place, amount, unit }: SplitInput,
): Promise<void> {
  if (container === null && place === null) return;
  const placeId = await placeOf(tx, change, { place, placeKind: null, building: null }, holderId);
  const code = await newLabelCode(tx);
  await change.create("Container", { id: uuidv7(), code, lotId, placeId, kind: container, amount, unit });
}
