import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import type { FormTexts } from "@/lib/schemas/varieties/form-texts";
import { TypeTraitSchema } from "@/lib/schemas/varieties/variety";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";

/** Corrects a line of a type description, with a reason; what stood there stays in the history. */
export async function correctTypeTrait(
  db: Database,
  actor: Actor,
  typeTraitId: string,
  input: FormTexts,
): Promise<Outcome<Performed<{ varietyId: string }>>> {
  const { reason = "", ...rest } = input;
  const read = parseForm(TypeTraitSchema, rest);
  if (!read.ok) return read;
  const line = await db.read.typeTrait.findUnique({ where: { id: typeTraitId }, include: { variety: true } });
  if (!line) {
    return refused(refusal("unknown-line", [], typeTraitId, "is no line here", "look at the type description again"));
  }
  if (reason.trim() === "") {
    return refused(
      refusal("reason-missing", ["reason"], "", "says why the line is changed", "write in a few words why"),
    );
  }
  const operation = {
    action: "correct" as const,
    title: `Type description of ${line.variety.name}: ${line.trait} corrected`,
    reason: reason.trim(),
  };
  return perform(db, actor, operation, async (change) => {
    await change.update("TypeTrait", typeTraitId, read.value);
    change.touch(line.varietyId);
    return accepted({ varietyId: line.varietyId });
  });
}
