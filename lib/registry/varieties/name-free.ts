import type { Transaction } from "@/lib/db";
import { type Refusal, refusal } from "@/lib/science/outcome";
import { foldName } from "../names/fold-name";

/** The refusal where a name belongs to another variety already; null where it is free. */
export async function nameTaken(tx: Transaction, name: string, exceptId?: string): Promise<Refusal | null> {
  const taken = await tx.variety.findFirst({
    where: { nameKey: foldName(name), NOT: { id: exceptId ?? "" } },
    include: { crop: true },
  });
  if (!taken) return null;
  const wrong = `is the name of a variety here (${taken.crop.commonName})`;
  const needed = "open that one, or add what tells the two apart, such as the place or the keeper";
  return refusal("name-taken", ["name"], name, wrong, needed);
}
