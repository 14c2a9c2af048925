import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { type AddPlantsInput, plantsMeant } from "@/lib/schemas/plants/add-plants";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import { foldName, sameName } from "../names/fold-name";
import { freeName } from "./free-name";
import { unknownGrowOut, unknownSteward } from "./save-plants";

/**
 * Adds plants to a grow-out: one by its tag, or a run of numbers. With an intent each gets a mark with the tag as it is written, even where
 * another plant has the same tag; without one the number is all that tells plants apart, so one that is taken is refused.
 */
export async function addPlants(
  db: Database,
  actor: Actor,
  growOutId: string,
  input: AddPlantsInput,
): Promise<Outcome<Performed<{ plants: number; tagsTwice: readonly string[] }>>> {
  const meant = plantsMeant(input);
  if (!meant.ok) return meant;
  return perform(db, actor, { action: "record-in-field", title: "Plants added" }, async (change, tx) => {
    const growOut = await tx.growOut.findUnique({
      where: { id: growOutId },
      include: { plants: { select: { name: true } } },
    });
    if (!growOut) return refused(unknownGrowOut(growOutId));
    const unknown = await unknownSteward(tx, input.steward);
    if (unknown) return refused({ ...unknown, path: ["steward"] });
    const names = new Set(growOut.plants.map((plant) => plant.name));
    const tagsTwice = meant.value.map((plant) => plant.tag).filter((tag) => names.has(sameName(tag)));
    if (input.intent === null && tagsTwice.length > 0) {
      const shown = `${tagsTwice.slice(0, 5).join(", ")}${tagsTwice.length > 5 ? " and more" : ""}`;
      const needed = "write other numbers, or choose an intent so that each gets a mark with its tag";
      return refused(refusal("tag-taken", [input.tag === null ? "from" : "tag"], shown, "stands here already", needed));
    }
    const made = meant.value.map(({ tag, cell }) => {
      const name = freeName(names, tag);
      names.add(name);
      return { tag, row: { id: uuidv7(), growOutId, name, nameKey: foldName(name), cell } };
    });
    await change.createAll(
      "Plant",
      made.map(({ row }) => row),
    );
    const { intent, on, words, steward: stewardId } = input;
    if (intent !== null) {
      const seen = { on: on.text, onFirst: on.first, onLast: on.last, words, stewardId };
      await change.createAll(
        "Mark",
        made.map(({ tag, row }) => ({ id: uuidv7(), plantId: row.id, tag, intent, ...seen })),
      );
    }
    const [first, last] = [made[0]?.tag, made.at(-1)?.tag];
    const which = first === last ? `plant ${first}` : `plants ${first} to ${last}`;
    change.title = `Grow-out ${growOut.name}: ${which} added${intent === null ? "" : `, marked ${intent}`}`;
    change.touch(growOut.varietyId);
    return accepted({ plants: made.length, tagsTwice });
  });
}
