import { uuidv7 } from "uuidv7";
import type { Transaction } from "@/lib/db";
import type { ChangeWriter } from "../change-set/writer";
import { foldName, sameName } from "../names/fold-name";

/** The strain of a variety by its name, in any letter case; a name that is new here becomes one of that keeper. No name: null. */
export async function strainOf(
  change: ChangeWriter,
  tx: Transaction,
  varietyId: string,
  name: string | null,
  keeperId: string | null,
  difference: string | null = null,
): Promise<string | null> {
  if (name === null) return null;
  const nameKey = foldName(name);
  const found = await tx.strain.findUnique({ where: { varietyId_nameKey: { varietyId, nameKey } } });
  if (found) {
    if (difference !== null && found.difference === null) await change.update("Strain", found.id, { difference });
    return found.id;
  }
  const id = uuidv7();
  await change.create("Strain", { id, varietyId, name: sameName(name), nameKey, stewardId: keeperId, difference });
  return id;
}
