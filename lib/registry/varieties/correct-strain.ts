import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import type { FormTexts } from "@/lib/schemas/varieties/form-texts";
import { strainSchema } from "@/lib/schemas/varieties/variety";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import { foldName, sameName } from "../names/fold-name";
import { readSettings } from "../settings/read-settings";
import { stewardNamed } from "../stewards/steward-named";
import { keepingCrossed } from "./add-strain";

/**
 * Puts right what is said of a strain, with a reason: what it is to the variety first of all, once it was grown side by side and looked at.
 * What stood there before stays in the history. Refused: no reason, a name that another strain of the variety has, years that cross.
 */
export async function correctStrain(
  db: Database,
  actor: Actor,
  strainId: string,
  { reason = "", ...input }: FormTexts,
): Promise<Outcome<Performed<{ varietyId: string }>>> {
  const read = parseForm(strainSchema((await readSettings(db.read)).hemisphere), input);
  if (!read.ok) return read;
  const { name, steward, keptFrom, keptTo, ...rest } = read.value;
  const strain = await db.read.strain.findUnique({
    where: { id: strainId },
    include: { variety: true, steward: { include: { person: true } } },
  });
  if (!strain)
    return refused(refusal("unknown-strain", [], strainId, "is no strain here", "look at the variety’s page again"));
  const crossed = keepingCrossed(keptFrom, keptTo);
  if (crossed) return refused(crossed);
  if (reason.trim() === "") {
    const needed = "write in a few words why, as: grown side by side in 2026";
    return refused(refusal("reason-missing", ["reason"], "", "says why the strain is changed", needed));
  }
  const title = `Strain ${strain.name} of ${strain.variety.name} put right`;
  return perform(db, actor, { action: "correct", title, reason: reason.trim() }, async (change, tx) => {
    const nameKey = foldName(name);
    const taken = await tx.strain.findFirst({ where: { varietyId: strain.varietyId, nameKey, id: { not: strainId } } });
    if (taken)
      return refused(refusal("name-taken", ["name"], name, "is another strain of this variety", "write another name"));
    // a keeper without a name (erased) cannot be typed: an empty field leaves them
    const nameless = strain.steward !== null && strain.steward.person === null ? strain.stewardId : null;
    const keeper = steward === null ? accepted(nameless) : await stewardNamed(tx, steward);
    if (!keeper.ok) return keeper;
    await change.update("Strain", strainId, {
      ...{ name: sameName(name), nameKey, stewardId: keeper.value },
      ...{ keptFrom: keptFrom?.text ?? null, keptTo: keptTo?.text ?? null },
      ...rest,
    });
    change.touch(strain.varietyId);
    return accepted({ varietyId: strain.varietyId });
  });
}
