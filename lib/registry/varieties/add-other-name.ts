import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import type { FormTexts } from "@/lib/schemas/varieties/form-texts";
import { OtherNameSchema } from "@/lib/schemas/varieties/variety";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import { foldName, sameName } from "../names/fold-name";
import { varietyOf } from "./variety-of";

/** Adds another name or spelling to a variety. Two varieties may share one: that is how old names are. */
export async function addOtherName(
  db: Database,
  actor: Actor,
  varietyId: string,
  input: FormTexts,
): Promise<Outcome<Performed<{ varietyId: string }>>> {
  const read = parseForm(OtherNameSchema, input);
  if (!read.ok) return read;
  const { name, kind, source } = read.value;
  const known = await varietyOf(db.read, varietyId);
  if (!known.ok) return known;
  const nameKey = foldName(name);
  const operation = { action: "desk" as const, title: `Other name of ${known.value.name}: ${sameName(name)}` };
  return perform(db, actor, operation, async (change, tx) => {
    const there = await tx.varietyName.findFirst({ where: { varietyId, nameKey } });
    if (there || known.value.nameKey === nameKey) {
      return refused(refusal("name-there", ["name"], name, "stands here already", "write another name, or leave it"));
    }
    await change.create("VarietyName", {
      id: uuidv7(),
      varietyId,
      name: sameName(name),
      nameKey,
      kind: kind ?? "other",
      source,
    });
    change.touch(varietyId);
    return accepted({ varietyId });
  });
}
