import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import { accepted, type Outcome, type Path, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import type { ChangeWriter } from "../change-set/writer";
import { type FieldTable, fieldNouns, recordToCorrect } from "./field-entries";
import { type InField, readInField } from "./in-field";
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
    return withoutRows(change, found.value, table, chain, ["entry"]);
  });
}

/** Takes rows of one kind away, and brings the grow-out's numbers into step. */
export async function withoutRows(
  change: ChangeWriter,
  field: InField,
  table: FieldTable,
  ids: readonly string[],
  at: Path,
): Promise<Outcome<{ growOutId: string }>> {
  await change.remove(table, ids);
  const gone = new Set(ids);
  const without = <R extends { readonly id: string }>(rows: readonly R[]) => rows.filter((row) => !gone.has(row.id));
  const is = { counts: without(field.counts), passes: without(field.passes) };
  const apart = await keepInStep(change, field, is, new Set(), at);
  if (apart.length > 0) return refused(...apart);
  change.touch(field.row.varietyId);
  return accepted({ growOutId: field.row.id });
}
