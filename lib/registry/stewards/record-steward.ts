import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import type { FormTexts } from "@/lib/schemas/varieties/form-texts";
import { StewardSchema } from "@/lib/schemas/varieties/steward";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import { foldName, sameName } from "../names/fold-name";

/** Records a steward. The name stands with the person, apart from what the steward keeps. */
export async function recordSteward(
  db: Database,
  actor: Actor,
  input: FormTexts,
): Promise<Outcome<Performed<{ stewardId: string }>>> {
  const read = parseForm(StewardSchema, input);
  if (!read.ok) return read;
  const { name, ...rest } = read.value;
  return perform(db, actor, { action: "desk", title: `Steward ${sameName(name)}` }, async (change, tx) => {
    const taken = await tx.person.findFirst({ where: { nameKey: foldName(name) } });
    if (taken) {
      const needed = "add a place or a second name, so that the two are told apart";
      return refused(refusal("name-taken", ["name"], name, "is the name of another steward", needed));
    }
    const stewardId = uuidv7();
    await change.create("Steward", { id: stewardId, ...rest });
    await change.create("Person", { id: uuidv7(), stewardId, name: sameName(name), nameKey: foldName(name) });
    return accepted({ stewardId });
  });
}
