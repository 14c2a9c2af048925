import { uuidv7 } from "uuidv7";
import type { RowOf } from "../change-set/records";
import { foldName, sameName } from "../names/fold-name";
import { samePlant } from "./asked-of-grow-out";
import type { PlantsHere } from "./field-ground";
import { dayAt, type Taking } from "./taking";

/**
 * Asks whether a plant is the same as another of its grow-out that another phone (or the desk) marked: one with the same tag, or at the same place.
 * A question that nobody has answered goes where the two are alike no more. Two plants of one phone are never asked of: it knew them apart.
 */
export async function askWhetherSame(taking: Taking, growOutId: string, plantId: string): Promise<void> {
  const { change, ground, now } = taking;
  const here = await ground.plantsOf(growOutId);
  const own = here.plants.get(plantId);
  const asked = questionsOf(here, plantId);
  const alike = own ? [...here.plants.values()].filter((other) => mayBeOne(here, own, other)) : [];
  const ids = new Set(alike.map(({ id }) => id));
  for (const { id, answeredAt, partner } of asked) {
    if (answeredAt !== null || ids.has(partner)) continue;
    await change.remove("Question", [id]);
    here.questions.delete(id);
  }
  const growOut = await ground.growOut(growOutId);
  for (const other of alike) {
    if (!own || asked.some(({ partner }) => partner === other.id)) continue;
    const [first, second] = [own, other].sort((one, two) => (one.id < two.id ? -1 : 1)) as [typeof own, typeof own];
    const row = {
      ...{ id: uuidv7(), kind: samePlant, growOutId, plantId: first.id, otherPlantId: second.id },
      sentence: `Is plant ${first.name} of grow-out ${growOut?.name} the same as plant ${second.name}? ${whyAlike(here, own, other)}`,
      ...{ raisedAt: dayAt(now, taking.actor.offsetMinutes), answeredAt: null },
    };
    await change.create("Question", row);
    here.questions.set(row.id, row);
  }
}

function questionsOf(here: PlantsHere, plantId: string) {
  return [...here.questions.values()].flatMap((question) => {
    const { plantId: one, otherPlantId: other } = question;
    if (one === null || other === null || (one !== plantId && other !== plantId)) return [];
    return [{ ...question, partner: one === plantId ? other : one }];
  });
}

function mayBeOne(here: PlantsHere, own: RowOf<"Plant">, other: RowOf<"Plant">): boolean {
  if (own.id === other.id || (own.sameAsId ?? own.id) === (other.sameAsId ?? other.id)) return false;
  const [phones, others] = [here.phones.get(own.id), here.phones.get(other.id)];
  if (phones && others && [...phones].some((phone) => others.has(phone))) return false;
  return samePlace(own, other) || sharedTag(here, own.id, other.id) !== null;
}

/** One place: the same row (or cell, where there are no rows) and position. */
function samePlace(one: RowOf<"Plant">, other: RowOf<"Plant">): boolean {
  if (one.position === null || one.position !== other.position) return false;
  const alike = (a: string | null, b: string | null) =>
    (a === null && b === null) || foldName(a ?? "") === foldName(b ?? "");
  return (one.row !== null || one.cell !== null) && alike(one.row, other.row) && alike(one.cell, other.cell);
}

/** A tag that marks which stand on both bear; null: none. */
function sharedTag(here: PlantsHere, plantId: string, otherId: string): string | null {
  const replaced = new Set([...here.marks.values()].map(({ replacesId }) => replacesId));
  const tagsOf = (id: string) =>
    [...here.marks.values()].flatMap((mark) =>
      mark.plantId === id && !replaced.has(mark.id) && mark.tag !== null ? [sameName(mark.tag)] : [],
    );
  const others = new Set(tagsOf(otherId));
  return tagsOf(plantId).find((tag) => others.has(tag)) ?? null;
}

function whyAlike(here: PlantsHere, own: RowOf<"Plant">, other: RowOf<"Plant">): string {
  const tag = sharedTag(here, own.id, other.id);
  const at = [
    own.cell,
    own.row === null ? null : `row ${own.row}`,
    own.position === null ? null : `place ${own.position}`,
  ];
  const place = samePlace(own, other) ? `at ${at.filter((part) => part !== null).join(", ")}` : "";
  const said = [tag === null ? "" : `with tag ${tag}`, place].filter((part) => part !== "").join(", ");
  return `Two hands marked one each ${said}.`;
}
