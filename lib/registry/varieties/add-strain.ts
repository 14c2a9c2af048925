import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import type { FormTexts } from "@/lib/schemas/varieties/form-texts";
import { strainSchema } from "@/lib/schemas/varieties/variety";
import type { FuzzyDate } from "@/lib/science/dates/fuzzy-date";
import { accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import { foldName, sameName } from "../names/fold-name";
import { readSettings } from "../settings/read-settings";
import { stewardNamed } from "../stewards/steward-named";
import { varietyOf } from "./variety-of";

/** Records a strain of a variety: one steward's long keeping. */
export async function addStrain(
  db: Database,
  actor: Actor,
  varietyId: string,
  input: FormTexts,
): Promise<Outcome<Performed<{ strainId: string }>>> {
  const read = parseForm(strainSchema((await readSettings(db.read)).hemisphere), input);
  if (!read.ok) return read;
  const { name, steward, keptFrom, keptTo, ...rest } = read.value;
  const crossed = keepingCrossed(keptFrom, keptTo);
  if (crossed) return refused(crossed);
  const known = await varietyOf(db.read, varietyId);
  if (!known.ok) return known;
  const operation = { action: "record" as const, title: `Strain ${sameName(name)} of ${known.value.name}` };
  return perform(db, actor, operation, async (change, tx) => {
    const nameKey = foldName(name);
    if (await tx.strain.findUnique({ where: { varietyId_nameKey: { varietyId, nameKey } } })) {
      return refused(
        refusal("name-taken", ["name"], name, "is a strain of this variety already", "write another name"),
      );
    }
    const keeper = steward === null ? accepted(null) : await stewardNamed(tx, steward);
    if (!keeper.ok) return keeper;
    const strainId = uuidv7();
    await change.create("Strain", {
      id: strainId,
      varietyId,
      name: sameName(name),
      nameKey,
      stewardId: keeper.value,
      keptFrom: keptFrom?.text ?? null,
      keptTo: keptTo?.text ?? null,
      ...rest,
    });
    change.touch(varietyId);
    return accepted({ strainId });
  });
}

/** A strain is given up after it was taken up; null where that may be. */
export function keepingCrossed(from: FuzzyDate | null, to: FuzzyDate | null): Refusal | null {
  if (!from || !to || from.first <= to.last) return null;
  const needed = "write a year that is not before it was taken up";
  return refusal("dates-crossed", ["keptTo"], to.text, "lies before the keeping began", needed);
}
