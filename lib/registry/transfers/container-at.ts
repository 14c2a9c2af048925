import { uuidv7 } from "uuidv7";
import type { Transaction } from "@/lib/db";
import type { ChangeWriter } from "../change-set/writer";
import { newLabelCode } from "../lots/new-label-code";
import { foldName } from "../names/fold-name";

/** Where seed that was deposited stands. */
export interface Deposit {
  readonly lotId: string;
  readonly holderId: string | null;
  /** name of the place; null: it is called as the building is */
  readonly place: string | null;
  readonly building: string | null;
  readonly amount: number;
  readonly unit: string;
}

/**
 * Says in which place and building seed of a lot stands: a container with a code of its own in the holder's place of that name, which is made
 * ("deposit elsewhere") where there is none. At least one of place and building is given. Answers the container's code.
 */
export async function containerAt(change: ChangeWriter, tx: Transaction, deposit: Deposit): Promise<string> {
  const { lotId, holderId, building, amount, unit } = deposit;
  const name = deposit.place ?? building;
  if (name === null) throw new Error("a deposit stands in a place or a building");
  const nameKey = foldName(name);
  const place = await tx.place.findFirst({ where: { nameKey, stewardId: holderId }, orderBy: { id: "asc" } });
  const placeId = place?.id ?? uuidv7();
  if (!place) {
    const kind = "deposit elsewhere";
    await change.create("Place", { id: placeId, name, nameKey, stewardId: holderId, kind, building });
  }
  const code = await newLabelCode(tx);
  await change.create("Container", { id: uuidv7(), code, lotId, placeId, amount, unit });
  return code;
}
