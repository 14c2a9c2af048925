import type { FieldRecord, PlantInField } from "@/lib/schemas/field/field-records";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import type { PatchOf, RowOf } from "../change-set/records";
import { foldName } from "../names/fold-name";
import { freeName } from "../plants/free-name";
import type { HowTaken, Taking } from "./taking";

/**
 * The plant that a record names, made where it is not here. Its place is filled in where none is written, and never written over. Refused: a plant
 * of another grow-out, and one that was taken out at the desk meanwhile (a person who says so puts it back).
 */
export async function plantFor(
  taking: Taking,
  { growOutId }: FieldRecord,
  sent: PlantInField,
  { judged }: HowTaken,
): Promise<Outcome<string>> {
  const { change, tx, ground } = taking;
  const { plants } = await ground.plantsOf(growOutId);
  const known = plants.get(sent.id);
  if (known) {
    const patch = placeToFill(known, sent);
    if (await change.update("Plant", known.id, patch)) plants.set(known.id, { ...known, ...patch });
    return accepted(known.id);
  }
  if (await tx.plant.findUnique({ where: { id: sent.id }, select: { id: true } })) {
    const needed = "look which grow-out it stands in";
    return refused(refusal("plant-of-another", ["plant"], sent.name, "is a plant of another grow-out", needed));
  }
  if (judged && (await removedByAPerson(taking, sent.id))) {
    const needed = "say that it stood there after all, or set this aside";
    return refused(refusal("plant-removed", ["plant"], sent.name, "was taken out of the registry meanwhile", needed));
  }
  const name = freeName(new Set([...plants.values()].map((plant) => plant.name)), sent.name);
  const { id, cell, row, position } = sent;
  const made = { id, growOutId, name, nameKey: foldName(name), cell, row, position };
  await change.create("Plant", made);
  plants.set(id, { ...made, sameAsId: null, kept: null, seedGrams: null, extra: null });
  return accepted(id);
}

function placeToFill(plant: RowOf<"Plant">, sent: PlantInField): PatchOf<"Plant"> {
  const filled = (["cell", "row", "position"] as const).filter(
    (field) => plant[field] === null && sent[field] !== null,
  );
  return Object.fromEntries(filled.map((field) => [field, sent[field]]));
}

/** Whether somebody took a plant out; one that went with its phone's own record comes again with the next. */
async function removedByAPerson({ tx }: Taking, plantId: string): Promise<boolean> {
  const last = await tx.change.findFirst({
    where: { recordId: plantId, action: "remove" },
    select: { changeSetId: true, changeSet: { select: { kind: true } } },
    orderBy: { changeSet: { number: "desc" } },
  });
  if (!last) return false;
  const bySelf =
    last.changeSet.kind === "entry" &&
    (await tx.change.count({ where: { changeSetId: last.changeSetId, tableName: "FieldRecord" } })) > 0;
  return !bySelf;
}

/** Takes a plant away that a phone made, and of which nothing is said any more. */
export async function dropBarePlant({ change, tx, ground }: Taking, growOutId: string, plantId: string): Promise<void> {
  const here = await ground.plantsOf(growOutId);
  const of = { where: { plantId } };
  const named = [
    await tx.mark.count(of),
    await tx.score.count(of),
    await tx.harvestSeedParent.count(of),
    await tx.photo.count(of),
    await tx.plant.count({ where: { sameAsId: plantId } }),
    await tx.question.count({ where: { OR: [{ plantId }, { otherPlantId: plantId }] } }),
  ];
  const plant = here.plants.get(plantId);
  if (!plant || plant.sameAsId !== null || named.some((count) => count > 0)) return;
  const made = await tx.change.findFirst({
    where: { recordId: plantId, action: "create" },
    select: { changeSet: { select: { changes: { where: { tableName: "FieldRecord" }, take: 1 } } } },
    orderBy: { changeSet: { number: "desc" } },
  });
  // One that is made in this very change set has no change yet.
  if (made && made.changeSet.changes.length === 0) return;
  await change.remove("Plant", [plantId]);
  here.plants.delete(plantId);
}
