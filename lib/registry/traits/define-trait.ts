import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import type { Database, Transaction } from "@/lib/db";
import { parseTrait, type TraitScope } from "@/lib/schemas/traits/trait-form";
import type { FormTexts } from "@/lib/schemas/varieties/form-texts";
import { accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import { foldName, sameName } from "../names/fold-name";
import { varietyOf } from "../varieties/variety-of";
import { meaningOf, namesOfTrait } from "./trait-row";

/**
 * Defines a trait for a variety, for every variety of its crop, or for all. Refused where a trait of that name stands there already, in
 * whatever letter case: a second one would be scored beside the first.
 */
export async function defineTrait(
  db: Database,
  actor: Actor,
  varietyId: string,
  input: FormTexts,
): Promise<Outcome<Performed<{ traitId: string }>>> {
  const read = parseTrait(input);
  if (!read.ok) return read;
  const known = await varietyOf(db.read, varietyId);
  if (!known.ok) return known;
  const { scope, ...definition } = read.value;
  const name = sameName(definition.name);
  const operation = {
    action: "record" as const,
    title: `Trait ${name} defined, ${scopeWords(scope, known.value.name)}`,
  };
  return perform(db, actor, operation, async (change, tx) => {
    const owner = ownerOf(scope, known.value);
    const taken = await nameTaken(tx, owner, name, null);
    if (taken) return refused(taken);
    const traitId = uuidv7();
    await change.create("Trait", {
      id: traitId,
      ...owner,
      ...namesOfTrait(name),
      version: 1,
      ...meaningOf(definition),
    });
    change.touch(varietyId);
    return accepted({ traitId });
  });
}

interface Owner {
  readonly varietyId: string | null;
  readonly cropId: string | null;
}

/** Whose a trait is: the variety's, its crop's, or nobody's alone. */
function ownerOf(scope: TraitScope, variety: { readonly id: string; readonly cropId: string }): Owner {
  return {
    varietyId: scope === "variety" ? variety.id : null,
    cropId: scope === "crop" ? variety.cropId : null,
  };
}

function scopeWords(scope: TraitScope, variety: string): string {
  return { variety: `for ${variety}`, crop: "for every variety of the crop", all: "for all varieties" }[scope];
}

/** Why a trait cannot have a name: another one of the same owner has it. `own` are the versions that are the trait itself. */
export async function nameTaken(
  tx: Transaction,
  owner: Owner,
  name: string,
  own: ReadonlySet<string> | null,
): Promise<Refusal | null> {
  const same = await tx.trait.findMany({
    where: { nameKey: foldName(name), varietyId: owner.varietyId, cropId: owner.cropId },
    select: { id: true, name: true },
  });
  const other = same.find((trait) => !own?.has(trait.id));
  if (!other) return null;
  const needed = `give it another name, or change the trait ${other.name}`;
  return refusal("trait-there", ["name"], name, "is a trait already", needed);
}
