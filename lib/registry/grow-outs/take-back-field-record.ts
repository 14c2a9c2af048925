import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import { accepted, type Outcome, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import { type FieldTable, fieldNouns, recordToCorrect } from "./field-entries";
import { readInField } from "./in-field";
import { keepInStep } from "./keep-in-step";

/**
 * Takes back a count, pass or flowering note that never should have stood, with what it had replaced. It stays in the history, which can put
 * it back. The grow-out's numbers follow; where nothing is left that speaks of one, what was written without it stands again.
 */
export async function takeBackFieldRecord(
  db: Database,
  actor: Actor,
  table: FieldTable,
  id: string,
  why: string,
  today: CivilDay,
): Promise<Outcome<Performed<{ growOutId: string }>>> {
  const old = await recordToCorrect(db.read, table, id);
  if (!old.ok) return old;
  const { growOutId, name, chain } = old.value;
  const title = `Grow-out ${name}: ${fieldNouns[table]} taken back`;
  return perform(db, actor, { action: "correct-in-field", title, reason: why }, async (change, tx) => {
    const found = await readInField(tx, growOutId, today);
    if (!found.ok) return found;
    const field = found.value;
    await change.remove(table, chain);
    const without = <R extends { readonly id: string }>(rows: readonly R[]) => rows.filter((row) => row.id !== id);
    const is = { counts: without(field.counts), passes: without(field.passes) };
    const apart = await keepInStep(change, field, is, new Set(), ["entry"]);
    if (apart.length > 0) return refused(...apart);
    change.touch(field.row.varietyId);
    return accepted({ growOutId });
  });
}
