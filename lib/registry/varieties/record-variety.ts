import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import type { FormTexts } from "@/lib/schemas/varieties/form-texts";
import { RecordVarietySchema } from "@/lib/schemas/varieties/variety";
import { accepted, type Outcome, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import { cropNamedOrOwn } from "../crops/crop-named";
import { foldName, sameName } from "../names/fold-name";
import { nameTaken } from "./name-free";

/** Records a variety of a crop. A crop that the list does not have becomes one of the steward's own where that is said. */
export async function recordVariety(
  db: Database,
  actor: Actor,
  input: FormTexts,
): Promise<Outcome<Performed<{ varietyId: string }>>> {
  const read = parseForm(RecordVarietySchema, input);
  if (!read.ok) return read;
  const { name, crop: cropName, ownCrop, aim, story, typeDescription } = read.value;
  return perform(db, actor, { action: "desk", title: `Variety ${sameName(name)}` }, async (change, tx) => {
    const taken = await nameTaken(tx, name);
    const crop = await cropNamedOrOwn(change, tx, cropName, ownCrop);
    if (taken || !crop.ok) return refused(...(taken ? [taken] : []), ...(crop.ok ? [] : crop.refusals));
    const varietyId = uuidv7();
    await change.create("Variety", {
      id: varietyId,
      name: sameName(name),
      nameKey: foldName(name),
      cropId: crop.value.id,
      aim,
      story,
      typeDescription,
    });
    change.touch(varietyId);
    return accepted({ varietyId });
  });
}
