import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import type { FormTexts } from "@/lib/schemas/varieties/form-texts";
import { CorrectVarietySchema } from "@/lib/schemas/varieties/variety";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import type { PatchOf, RowOf } from "../change-set/records";
import { foldName, sameName } from "../names/fold-name";
import { nameTaken } from "./name-free";
import { varietyOf } from "./variety-of";

/**
 * Corrects fields of a variety; what is not given stays. Filling a field that was empty needs no reason; where words are replaced or
 * taken out, a reason is asked for and kept in the history.
 */
export async function correctVariety(
  db: Database,
  actor: Actor,
  varietyId: string,
  input: FormTexts,
): Promise<Outcome<Performed<{ varietyId: string }>>> {
  const read = parseForm(CorrectVarietySchema, { ...standsIn, ...input });
  if (!read.ok) return read;
  const { reason, ...all } = read.value;
  // Only what was given is changed: a field that is not in the form is not an empty one.
  const fields: Partial<typeof all> = Object.fromEntries(
    Object.entries(all).filter(([key]) => input[key] !== undefined),
  );
  const known = await varietyOf(db.read, varietyId);
  if (!known.ok) return known;
  const title = `${known.value.name} corrected`;
  return perform(db, actor, { action: "correct", title, reason }, async (change, tx) => {
    const found = await varietyOf(tx, varietyId);
    if (!found.ok) return found;
    const patch: PatchOf<"Variety"> = { ...fields };
    if (fields.name !== undefined) {
      const taken = await nameTaken(tx, fields.name, varietyId);
      if (taken) return refused(taken);
      patch.name = sameName(fields.name);
      patch.nameKey = foldName(fields.name);
    }
    const replaced = replacedField(found.value, patch);
    if (replaced && !reason) {
      const needed = "write in a few words why; both stay in the history";
      return refused(refusal("reason-missing", ["reason"], "", `says why ${replaced} is replaced`, needed));
    }
    const changed = await change.update("Variety", varietyId, patch);
    if (changed) change.touch(varietyId);
    return accepted({ varietyId });
  });
}

/** What the shape needs of a correction that leaves these fields alone. */
const standsIn = { name: "(as it is)", sensitivity: "circle" };

const words: Partial<Record<keyof RowOf<"Variety">, string>> = {
  typeDescription: "the type description",
  plantsWanted: "the number of plants",
  seedParentsWanted: "the number of seed parents",
  isolationWantedM: "the isolation",
  sensitivity: "who may see it",
};

/** The first field in which something that was written would be replaced, in words. */
function replacedField(before: RowOf<"Variety">, patch: PatchOf<"Variety">): string | null {
  const keys = Object.keys(patch) as (keyof PatchOf<"Variety">)[];
  const key = keys.find((each) => before[each] !== null && patch[each] !== undefined && patch[each] !== before[each]);
  return key ? (words[key] ?? `the ${key === "nameKey" ? "name" : key}`) : null;
}
