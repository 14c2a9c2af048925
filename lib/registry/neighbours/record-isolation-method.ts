import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import type { Client, Database } from "@/lib/db";
import type { IsolationMethodInput } from "@/lib/schemas/neighbours/isolation-method";
import { accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import type { RowOf } from "../change-set/records";
import { growOutOf } from "../grow-outs/grow-out-of";

type Done = Promise<Outcome<Performed<{ growOutId: string }>>>;

/** Writes down what was done to keep other pollen off a grow-out. */
export async function recordIsolationMethod(
  db: Database,
  actor: Actor,
  growOutId: string,
  input: IsolationMethodInput,
): Done {
  const growOut = await growOutOf(db.read, growOutId);
  if (!growOut.ok) return growOut;
  const title = `Grow-out ${growOut.value.name}: isolation by ${input.method}`;
  return perform(db, actor, { action: "record-in-field", title }, async (change) => {
    const faults = dayFaults(input);
    if (faults.length > 0) return refused(...faults);
    await change.create("IsolationMethod", { id: uuidv7(), growOutId, ...fieldsOf(input) });
    change.touch(growOut.value.varietyId);
    return accepted({ growOutId });
  });
}

/** Puts right what was written of a method; what stood before stays in the history. */
export async function correctIsolationMethod(
  db: Database,
  actor: Actor,
  methodId: string,
  input: IsolationMethodInput,
): Done {
  const found = await methodOf(db.read, methodId);
  if (!found.ok) return found;
  const { growOut } = found.value;
  const title = `Grow-out ${growOut.name}: isolation put right, ${input.method}`;
  return perform(db, actor, { action: "correct-in-field", title }, async (change) => {
    const faults = dayFaults(input);
    if (faults.length > 0) return refused(...faults);
    await change.update("IsolationMethod", methodId, fieldsOf(input));
    change.touch(growOut.varietyId);
    return accepted({ growOutId: growOut.id });
  });
}

/** Takes out a method that was not used. History can take it back. */
export async function removeIsolationMethod(
  db: Database,
  actor: Actor,
  methodId: string,
  reason: string | null = null,
): Done {
  const found = await methodOf(db.read, methodId);
  if (!found.ok) return found;
  const { growOut, method } = found.value;
  const title = `Grow-out ${growOut.name}: isolation by ${method.method} taken out`;
  return perform(db, actor, { action: "correct-in-field", title, reason }, async (change) => {
    await change.remove("IsolationMethod", [methodId]);
    change.touch(growOut.varietyId);
    return accepted({ growOutId: growOut.id });
  });
}

async function methodOf(
  db: Client,
  id: string,
): Promise<Outcome<{ method: RowOf<"IsolationMethod">; growOut: RowOf<"GrowOut"> }>> {
  const method = await db.isolationMethod.findUnique({ where: { id } });
  if (!method)
    return refused(refusal("unknown", ["method"], id, "is no isolation method here", "choose one of the list"));
  const growOut = await growOutOf(db, method.growOutId);
  return growOut.ok ? accepted({ method, growOut: growOut.value }) : growOut;
}

function fieldsOf({ method, evidence, fromOn, toOn, note }: IsolationMethodInput) {
  return { method, evidence, fromOn: fromOn?.text ?? null, toOn: toOn?.text ?? null, note };
}

function dayFaults({ fromOn, toOn }: IsolationMethodInput): Refusal[] {
  if (!fromOn || !toOn || toOn.last >= fromOn.first) return [];
  const needed = "write the later day here";
  return [refusal("ends-before", ["toOn"], toOn.text, `lies before ${fromOn.text}`, needed)];
}
