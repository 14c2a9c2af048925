import type { Client, Transaction } from "@/lib/db";
import { type Settings, SettingsSchema } from "@/lib/schemas/settings";

/** The registry's settings; what nobody set has its default. */
export async function readSettings(db: Client | Transaction): Promise<Settings> {
  const rows = await db.setting.findMany();
  return SettingsSchema.parse(Object.fromEntries(rows.map((row) => [row.key, JSON.parse(row.value)])));
}
