import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import type { FormTexts } from "@/lib/schemas/varieties/form-texts";
import { TypeTraitSchema } from "@/lib/schemas/varieties/variety";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import { foldName } from "../names/fold-name";
import { varietyOf } from "./variety-of";

/** Adds a line to a variety's type description: what a trait may look like, and what is off-type. One line a trait. */
export async function addTypeTrait(
  db: Database,
  actor: Actor,
  varietyId: string,
  input: FormTexts,
): Promise<Outcome<Performed<{ varietyId: string }>>> {
  const read = parseForm(TypeTraitSchema, input);
  if (!read.ok) return read;
  const known = await varietyOf(db.read, varietyId);
  if (!known.ok) return known;
  const { trait } = read.value;
  const operation = { action: "record" as const, title: `Type description of ${known.value.name}: ${trait}` };
  return perform(db, actor, operation, async (change, tx) => {
    const lines = await tx.typeTrait.findMany({ where: { varietyId } });
    if (lines.some((line) => foldName(line.trait) === foldName(trait))) {
      const needed = "correct that line, so that one trait has one description";
      return refused(refusal("trait-there", ["trait"], trait, "has a line already", needed));
    }
    await change.create("TypeTrait", { id: uuidv7(), varietyId, ...read.value });
    change.touch(varietyId);
    return accepted({ varietyId });
  });
}
