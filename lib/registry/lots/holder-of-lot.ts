import { uuidv7 } from "uuidv7";
import type { Transaction } from "@/lib/db";
import { accepted, type Outcome, type Refusal } from "@/lib/science/outcome";
import type { ChangeWriter } from "../change-set/writer";
import { foldName, sameName } from "../names/fold-name";
import { stewardNamed } from "../stewards/steward-named";

/**
 * The steward of a name, for a lot's holder. A name that nobody has here is refused unless it was said to be new: then the steward is
 * entered with the lot. No name: not known (null).
 */
export async function holderOfLot(
  tx: Transaction,
  change: ChangeWriter,
  holder: string | null,
  isNew: boolean,
): Promise<Outcome<string | null>> {
  if (holder === null) return accepted(null);
  const known = await stewardNamed(tx, holder, "holder");
  if (known.ok) return known;
  if (known.refusals.some((each) => each.code !== "unknown-steward")) return known;
  if (!isNew) return { ok: false, refusals: known.refusals.map(orTick) };
  const stewardId = uuidv7();
  await change.create("Steward", { id: stewardId });
  await change.create("Person", { id: uuidv7(), stewardId, name: sameName(holder), nameKey: foldName(holder) });
  return accepted(stewardId);
}

function orTick(each: Refusal): Refusal {
  const end = ", or tick that this is somebody new";
  return { ...each, needed: each.needed + end, sentence: each.sentence + end };
}
