import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { publishedTable } from "@/lib/schemas/tables/published-tables";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";

/** Takes an own value back, so that the published one holds again. */
export async function removeTableValue(
  db: Database,
  actor: Actor,
  id: string,
): Promise<Outcome<Performed<{ table: string }>>> {
  const own = await db.read.tableOverride.findUnique({ where: { id } });
  if (!own) return refused(refusal("unknown-own-value", ["id"], id, "is no own value here", "look at the table again"));
  const name = publishedTable(own.table)?.rows.find(({ key }) => key === own.row)?.name ?? own.row;
  const operation = { action: "settings" as const, title: `The table's value again for ${name}` };
  return perform(db, actor, operation, async (change) => {
    await change.remove("TableOverride", [id]);
    change.touchNothing();
    return accepted({ table: own.table });
  });
}
