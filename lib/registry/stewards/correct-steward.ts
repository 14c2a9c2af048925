import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import type { FormTexts } from "@/lib/schemas/varieties/form-texts";
import { StewardSchema } from "@/lib/schemas/varieties/steward";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import { foldName, sameName } from "../names/fold-name";

/** Corrects what is written of a steward; the name stays unique. */
export async function correctSteward(
  db: Database,
  actor: Actor,
  stewardId: string,
  input: FormTexts,
): Promise<Outcome<Performed<{ stewardId: string }>>> {
  const read = parseForm(StewardSchema, input);
  if (!read.ok) return read;
  const { name, ...rest } = read.value;
  return perform(
    db,
    actor,
    { action: "correct-at-desk", title: `Steward ${sameName(name)} corrected` },
    async (change, tx) => {
      const person = await tx.person.findUnique({ where: { stewardId } });
      if (!person) {
        return refused(refusal("unknown-steward", [], stewardId, "is no steward here", "choose one of the list"));
      }
      const taken = await tx.person.findFirst({ where: { nameKey: foldName(name), NOT: { stewardId } } });
      if (taken) {
        const needed = "add a place or a second name, so that the two are told apart";
        return refused(refusal("name-taken", ["name"], name, "is the name of another steward", needed));
      }
      await change.update("Person", person.id, { name: sameName(name), nameKey: foldName(name) });
      await change.update("Steward", stewardId, rest);
      return accepted({ stewardId });
    },
  );
}
