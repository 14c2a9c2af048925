import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import type { Database, Transaction } from "@/lib/db";
import { parseTrait } from "@/lib/schemas/traits/trait-form";
import type { FormTexts } from "@/lib/schemas/varieties/form-texts";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import type { RowOf } from "../change-set/records";
import { sameName } from "../names/fold-name";
import { nameTaken } from "./define-trait";
import { meaningOf, namesOfTrait, scopeOf } from "./trait-row";

export interface ChangedTrait {
  /** the version that stands now */
  readonly traitId: string;
  readonly version: number;
}

/**
 * Changes what a trait means. Where plants were scored by it, a new version is made and the scores keep the one they were made by; a trait
 * that nobody has used is changed in place. A new name is that of all its versions. For whom the trait is cannot be changed.
 * `varietyId` is the variety on whose page it is done.
 */
export async function changeTrait(
  db: Database,
  actor: Actor,
  varietyId: string,
  traitId: string,
  input: FormTexts,
): Promise<Outcome<Performed<ChangedTrait>>> {
  const found = await traitToChange(db, traitId);
  if (!found.ok) return found;
  const old = found.value;
  const read = parseTrait({ ...input, scope: scopeOf(old) });
  if (!read.ok) return read;
  const meaning = meaningOf(read.value);
  const name = sameName(read.value.name);
  return perform(db, actor, { action: "correct", title: `Trait ${name} changed` }, async (change, tx) => {
    const versions = await versionsOf(tx, old);
    const taken = await nameTaken(tx, old, name, new Set(versions.map((each) => each.id)));
    if (taken) return refused(taken);
    for (const version of versions) await change.update("Trait", version.id, namesOfTrait(name));
    const differs = Object.entries(meaning).some(([key, value]) => old[key as keyof typeof meaning] !== value);
    let standing: ChangedTrait = { traitId: old.id, version: old.version };
    if (differs && (await isUsed(tx, old.id))) {
      standing = { traitId: uuidv7(), version: old.version + 1 };
      const { varietyId, cropId } = old;
      const row = { id: standing.traitId, varietyId, cropId, ...namesOfTrait(name), ...meaning };
      await change.create("Trait", { ...row, version: standing.version, previousId: old.id });
      change.title = `Trait ${name}: version ${standing.version}`;
    } else if (differs) await change.update("Trait", old.id, meaning);
    change.touch(varietyId);
    return accepted(standing);
  });
}

/** Takes away a trait that was never used; refused where plants were scored by it or a type description speaks of it. */
export async function removeTrait(
  db: Database,
  actor: Actor,
  varietyId: string,
  traitId: string,
): Promise<Outcome<Performed<{ name: string }>>> {
  const found = await traitToChange(db, traitId);
  if (!found.ok) return found;
  const old = found.value;
  return perform(db, actor, { action: "correct", title: `Trait ${old.name} taken away` }, async (change, tx) => {
    if (old.previousId !== null || (await isUsed(tx, old.id))) {
      const needed = "leave it, and score by another trait from now on";
      return refused(refusal("trait-used", [], old.name, "was used to score plants", needed));
    }
    if (await tx.photo.findFirst({ where: { traitId: old.id }, select: { id: true } }))
      return refused(refusal("trait-pictured", [], old.name, "has pictures", "take those away first"));
    await change.remove("Trait", [old.id]);
    change.touch(varietyId);
    return accepted({ name: old.name });
  });
}

async function traitToChange(db: Database, traitId: string): Promise<Outcome<RowOf<"Trait">>> {
  const found = await db.read.trait.findUnique({ where: { id: traitId }, include: { next: { select: { id: true } } } });
  if (!found)
    return refused(refusal("unknown", ["trait"], traitId, "is no trait of this registry", "choose one of the list"));
  const { next, ...row } = found;
  if (next === null) return accepted(row);
  const wrong = `is version ${row.version}, and a newer one stands`;
  return refused(refusal("older-version", ["trait"], row.name, wrong, "change the newest version"));
}

/** A trait with the versions before it, the newest first. */
async function versionsOf(tx: Transaction, newest: RowOf<"Trait">): Promise<RowOf<"Trait">[]> {
  const versions = [newest];
  for (let id = newest.previousId; id !== null; ) {
    const version: RowOf<"Trait"> = await tx.trait.findUniqueOrThrow({ where: { id } });
    versions.push(version);
    id = version.previousId;
  }
  return versions;
}

/** Scores that were replaced or taken back are read by it still. */
async function isUsed(tx: Transaction, traitId: string): Promise<boolean> {
  const score = await tx.score.findFirst({ where: { traitId }, select: { id: true } });
  return score !== null || (await tx.typeTrait.findFirst({ where: { traitId }, select: { id: true } })) !== null;
}
