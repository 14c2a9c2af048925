import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { type Settings, SettingsSchema } from "@/lib/schemas/settings";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import { readSettings } from "./read-settings";

/** Changes settings. The urgent line must lie below the planning line. */
export async function changeSettings(
  db: Database,
  actor: Actor,
  wanted: Partial<Settings>,
): Promise<Outcome<Performed<Settings>>> {
  return perform(db, actor, { action: "settings", title: "Settings changed" }, async (change, tx) => {
    const settings = SettingsSchema.parse({ ...(await readSettings(tx)), ...wanted });
    if (settings.renewalUrgent >= settings.renewalPlan) {
      const needed = `write a share below ${settings.renewalPlan}`;
      return refused(
        refusal(
          "lines-crossed",
          ["renewalUrgent"],
          settings.renewalUrgent,
          "is not below the line for planning",
          needed,
        ),
      );
    }
    const rows = new Map((await tx.setting.findMany()).map((row) => [row.key, row]));
    for (const [key, value] of Object.entries(wanted)) {
      const text = JSON.stringify(value);
      const row = rows.get(key);
      if (row) await change.update("Setting", row.id, { value: text });
      else await change.create("Setting", { id: uuidv7(), key, value: text });
    }
    return accepted(settings);
  });
}
