import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import type { FormTexts } from "@/lib/schemas/varieties/form-texts";
import { SeedCoatSchema } from "@/lib/schemas/varieties/seed-coat";
import { accepted, type Outcome } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import { varietyOf } from "./variety-of";

/** Chooses a variety's seed-coat mark; null has it drawn from the name again. */
export async function chooseSeedCoat(
  db: Database,
  actor: Actor,
  varietyId: string,
  choice: FormTexts | null,
): Promise<Outcome<Performed<{ varietyId: string }>>> {
  const read = choice === null ? accepted(null) : parseForm(SeedCoatSchema, choice);
  if (!read.ok) return read;
  const known = await varietyOf(db.read, varietyId);
  if (!known.ok) return known;
  const operation = { action: "record" as const, title: `Seed-coat mark of ${known.value.name}` };
  return perform(db, actor, operation, async (change) => {
    const seedCoat = read.value === null ? null : JSON.stringify(read.value);
    if (await change.update("Variety", varietyId, { seedCoat })) change.touch(varietyId);
    return accepted({ varietyId });
  });
}
