import { uuidv7 } from "uuidv7";
import type { Transaction } from "@/lib/db";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import type { ChangeWriter } from "../change-set/writer";
import { foldName, sameName } from "../names/fold-name";
import { stewardNamed } from "../stewards/steward-named";

/**
 * The holder of a lot: the steward of the name that was chosen, or one who is entered with the lot because nobody of that name is here yet.
 * No name at all: not known (null). Both names are refused: which of the two it is only a person can say.
 */
export async function holderOfLot(
  tx: Transaction,
  change: ChangeWriter,
  { holder, newHolder }: { readonly holder: string | null; readonly newHolder: string | null },
): Promise<Outcome<string | null>> {
  if (holder !== null && newHolder !== null) {
    const needed = `leave one of the two empty: "${holder}" or "${newHolder}"`;
    return refused(refusal("two-holders", ["newHolder"], newHolder, "stands here beside the chosen holder", needed));
  }
  if (holder !== null) return stewardNamed(tx, holder, "holder");
  if (newHolder === null) return accepted(null);
  const nameKey = foldName(newHolder);
  const taken = await tx.person.findFirst({ where: { nameKey } });
  if (taken) {
    const needed = "choose that steward in the list, or write the new one with a second name";
    return refused(refusal("name-taken", ["newHolder"], newHolder, "is the name of a steward already", needed));
  }
  const stewardId = uuidv7();
  await change.create("Steward", { id: stewardId });
  await change.create("Person", { id: uuidv7(), stewardId, name: sameName(newHolder), nameKey });
  return accepted(stewardId);
}
