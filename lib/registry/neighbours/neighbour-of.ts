import type { Client, Transaction } from "@/lib/db";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import type { RowOf } from "../change-set/records";
import { growOutOf } from "../grow-outs/grow-out-of";

/** A neighbour source by its id, with its grow-out; refused where there is none. */
export async function neighbourOf(
  db: Client | Transaction,
  id: string,
): Promise<Outcome<{ neighbour: RowOf<"NeighbourSource">; growOut: RowOf<"GrowOut"> }>> {
  const neighbour = await db.neighbourSource.findUnique({ where: { id } });
  if (!neighbour?.growOutId)
    return refused(refusal("unknown", ["neighbour"], id, "is no neighbour of a grow-out", "choose one of the list"));
  const growOut = await growOutOf(db, neighbour.growOutId);
  return growOut.ok ? accepted({ neighbour, growOut: growOut.value }) : growOut;
}
