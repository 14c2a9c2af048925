import type { Transaction } from "@/lib/db";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import type { RowOf } from "../change-set/records";

/** The variety with an id, or the refusal that there is none. */
export async function varietyOf(tx: Transaction, id: string): Promise<Outcome<RowOf<"Variety">>> {
  const variety = await tx.variety.findUnique({ where: { id } });
  if (variety) return accepted(variety);
  return refused(refusal("unknown-variety", [], id, "is no variety here", "choose one of the list"));
}
