import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import type { FormTexts } from "@/lib/schemas/varieties/form-texts";
import { storySchema } from "@/lib/schemas/varieties/variety";
import { accepted, type Outcome } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import { readSettings } from "../settings/read-settings";
import { varietyOf } from "./variety-of";

/** Writes down a story of a variety in the teller's words. Two stories that contradict each other may stand side by side. */
export async function tellStory(
  db: Database,
  actor: Actor,
  varietyId: string,
  input: FormTexts,
): Promise<Outcome<Performed<{ storyId: string }>>> {
  const read = parseForm(storySchema((await readSettings(db.read)).hemisphere), input);
  if (!read.ok) return read;
  const { words, teller, toldOn, about } = read.value;
  const known = await varietyOf(db.read, varietyId);
  if (!known.ok) return known;
  const operation = { action: "record" as const, title: `Story of ${known.value.name}` };
  return perform(db, actor, operation, async (change) => {
    const storyId = uuidv7();
    await change.create("Story", {
      id: storyId,
      varietyId,
      words,
      teller,
      stewardId: actor.stewardId,
      toldOn: toldOn?.text ?? null,
      about: about?.text ?? null,
      aboutFirst: about?.first ?? null,
      aboutLast: about?.last ?? null,
    });
    change.touch(varietyId);
    return accepted({ storyId });
  });
}
