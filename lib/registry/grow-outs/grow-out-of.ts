import type { Client, Transaction } from "@/lib/db";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import type { RowOf } from "../change-set/records";

/** A grow-out by its id; refused where there is none. */
export async function growOutOf(db: Client | Transaction, id: string): Promise<Outcome<RowOf<"GrowOut">>> {
  const growOut = await db.growOut.findUnique({ where: { id } });
  if (growOut) return accepted(growOut);
  return refused(refusal("unknown", ["growOut"], id, "is no grow-out of this registry", "choose one of the list"));
}
