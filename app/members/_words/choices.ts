import type { Actor } from "@/lib/access/actor";
import { roleMay } from "@/lib/access/permissions";
import { listGrowOutNames } from "@/lib/registry/accounts/list-grow-out-names";
import type { Database } from "@/lib/registry/handles";
import { listStewards } from "@/lib/registry/stewards/list-stewards";

/** What a membership can name; null for whoever may not change one. */
export async function choicesOf(db: Database, actor: Actor) {
  if (!roleMay(actor.role, "members")) return null;
  const [stewards, growOuts] = [await listStewards(db), await listGrowOutNames(db)];
  return {
    stewards: stewards.map((each) => ({ id: each.id, name: each.name ?? "a steward (name erased)" })),
    growOuts,
  };
}
