import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import type { Database, Transaction } from "@/lib/db";
import type { NeighbourInput } from "@/lib/schemas/neighbours/neighbour";
import { accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import { growOutOf } from "../grow-outs/grow-out-of";
import { neighbourOf } from "./neighbour-of";

/** Writes down another planting or wild stand that could send pollen to a grow-out. What is not known stays empty. */
export async function recordNeighbour(
  db: Database,
  actor: Actor,
  growOutId: string,
  input: NeighbourInput,
): Promise<Outcome<Performed<{ neighbourId: string }>>> {
  const growOut = await growOutOf(db.read, growOutId);
  if (!growOut.ok) return growOut;
  const title = `Grow-out ${growOut.value.name}: neighbour source, ${input.what}`;
  return perform(db, actor, { action: "record-in-field", title }, async (change, tx) => {
    const fields = await fieldsOf(tx, growOutId, input);
    if (!fields.ok) return fields;
    const id = uuidv7();
    await change.create("NeighbourSource", { id, growOutId, ...fields.value });
    change.touch(growOut.value.varietyId);
    return accepted({ neighbourId: id });
  });
}

/** Puts a neighbour source right; what stood before stays in the history. */
export async function correctNeighbour(
  db: Database,
  actor: Actor,
  neighbourId: string,
  input: NeighbourInput,
): Promise<Outcome<Performed<{ neighbourId: string; growOutId: string }>>> {
  const found = await neighbourOf(db.read, neighbourId);
  if (!found.ok) return found;
  const { growOut } = found.value;
  const title = `Grow-out ${growOut.name}: neighbour source put right, ${input.what}`;
  return perform(db, actor, { action: "correct-in-field", title }, async (change, tx) => {
    const fields = await fieldsOf(tx, growOut.id, input);
    if (!fields.ok) return fields;
    await change.update("NeighbourSource", neighbourId, fields.value);
    change.touch(growOut.varietyId);
    return accepted({ neighbourId, growOutId: growOut.id });
  });
}

/** Takes out a neighbour source that should never have stood there, with what was noted of its flowering. History can take it back. */
export async function removeNeighbour(
  db: Database,
  actor: Actor,
  neighbourId: string,
  reason: string | null = null,
): Promise<Outcome<Performed<{ growOutId: string }>>> {
  const found = await neighbourOf(db.read, neighbourId);
  if (!found.ok) return found;
  const { growOut, neighbour } = found.value;
  const title = `Grow-out ${growOut.name}: neighbour source taken out, ${neighbour.what}`;
  return perform(db, actor, { action: "correct-in-field", title, reason }, async (change, tx) => {
    const notes = await tx.floweringNote.findMany({ where: { neighbourId }, select: { id: true } });
    await change.remove(
      "FloweringNote",
      notes.map((note) => note.id),
    );
    await change.remove("NeighbourSource", [neighbourId]);
    change.touch(growOut.varietyId);
    return accepted({ growOutId: growOut.id });
  });
}

async function fieldsOf(tx: Transaction, growOutId: string, input: NeighbourInput) {
  const variety =
    input.variety === null
      ? null
      : await tx.variety.findUnique({ where: { id: input.variety }, select: { id: true, name: true, cropId: true } });
  const crop =
    input.crop === null ? null : await tx.crop.findUnique({ where: { id: input.crop }, select: { id: true } });
  const plot =
    input.plot === null ? null : await tx.growOutPlot.findFirst({ where: { growOutId, plotId: input.plot } });
  const faults: Refusal[] = [];
  const wrong = (code: string, field: string, given: unknown, says: string, needed: string) =>
    faults.push(refusal(code, [field], given, says, needed));
  if (input.crop !== null && !crop) wrong("unknown", "crop", input.crop, "is no crop here", "choose one of the list");
  if (input.variety !== null && !variety)
    wrong("unknown", "variety", input.variety, "is no variety of this registry", "choose one of the list");
  if (input.plot !== null && !plot)
    wrong("unknown", "plot", input.plot, "is no plot of this grow-out", "choose one of the list");
  if (variety && crop && variety.cropId !== crop.id)
    wrong("other-crop", "variety", variety.name, "is of another crop", "choose its crop, or leave the crop empty");
  const { windowFirst, windowLast } = input;
  if (windowFirst && windowLast && windowLast.last < windowFirst.first)
    wrong("ends-before", "windowLast", windowLast.text, `lies before ${windowFirst.text}`, "write the later day here");
  if (faults.length > 0) return refused(...faults);
  return accepted({
    what: input.what,
    cropId: crop?.id ?? variety?.cropId ?? null,
    varietyId: variety?.id ?? null,
    plotId: input.plot,
    distanceMetres: input.distanceMetres,
    bearing: input.bearing,
    sizeM2: input.sizeM2,
    plants: input.plants,
    windowFirst: windowFirst?.text ?? null,
    windowLast: windowLast?.text ?? null,
    howSure: input.howSure,
    note: input.note,
  });
}
