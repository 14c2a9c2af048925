import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import type { FormTexts } from "@/lib/schemas/varieties/form-texts";
import { PossiblySameSchema } from "@/lib/schemas/varieties/variety";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import { varietyOf } from "./variety-of";

/** The kind of name under which another variety stands that is possibly the same. */
export const possiblySame = "possibly the same";

/**
 * Writes down that somebody takes two varieties for one. Nothing is joined by it: both keep their lots and figures, and each page and the
 * search name the other. Refused: the variety itself, one that is not here, one of another crop, a pair that is told already.
 */
export async function tellPossiblySame(
  db: Database,
  actor: Actor,
  varietyId: string,
  input: FormTexts,
): Promise<Outcome<Performed<{ varietyId: string }>>> {
  const read = parseForm(PossiblySameSchema, input);
  if (!read.ok) return read;
  const { other: otherId, source } = read.value;
  const known = await varietyOf(db.read, varietyId);
  if (!known.ok) return known;
  const wrong = (code: string, given: string, what: string, needed: string) =>
    refused(refusal(code, ["other"], given, what, needed));
  const other = await varietyOf(db.read, otherId);
  if (!other.ok) return wrong("unknown-variety", otherId, "is no variety of this registry", "choose one of the list");
  const { name, nameKey } = other.value;
  if (otherId === varietyId) return wrong("same-variety", name, "is this variety itself", "choose another");
  if (other.value.cropId !== known.value.cropId)
    return wrong("another-crop", name, "is of another crop", "choose a variety of the same crop");
  const operation = { action: "desk" as const, title: `${known.value.name} possibly the same as ${name}` };
  return perform(db, actor, operation, async (change, tx) => {
    const pairs = [
      { varietyId, possiblySameAsId: otherId },
      { varietyId: otherId, possiblySameAsId: varietyId },
    ];
    if (await tx.varietyName.findFirst({ where: { OR: pairs } }))
      return wrong(
        "told-already",
        name,
        "is told to be possibly the same already",
        "leave it, or take that back first",
      );
    await change.create("VarietyName", {
      id: uuidv7(),
      varietyId,
      name,
      nameKey,
      kind: possiblySame,
      source,
      possiblySameAsId: otherId,
    });
    change.touch(varietyId);
    return accepted({ varietyId });
  });
}
