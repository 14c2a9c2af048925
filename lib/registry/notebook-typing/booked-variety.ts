import { uuidv7 } from "uuidv7";
import type { Transaction } from "@/lib/db";
import type { NotebookBooking } from "@/lib/schemas/notebook-typing/notebook-booking";
import { accepted, type Outcome, refused } from "@/lib/science/outcome";
import type { ChangeWriter } from "../change-set/writer";
import { cropNamedOrOwn } from "../crops/crop-named";
import { foldName, sameName } from "../names/fold-name";
import { stewardNamed } from "../stewards/steward-named";
import { nameTaken } from "../varieties/name-free";
import { varietyOf } from "../varieties/variety-of";

export interface BookedVariety {
  readonly id: string;
  readonly name: string;
}

/** The variety that the notebook is of: one that stands, or a new one of a crop. */
export async function bookedVariety(
  change: ChangeWriter,
  tx: Transaction,
  given: NotebookBooking["variety"],
): Promise<Outcome<BookedVariety>> {
  if ("id" in given) {
    const found = await varietyOf(tx, given.id);
    return found.ok ? accepted({ id: found.value.id, name: found.value.name }) : found;
  }
  const taken = await nameTaken(tx, given.name);
  const crop = await cropNamedOrOwn(change, tx, given.crop, given.ownCrop);
  const refusals = [...(taken ? [taken] : []), ...(crop.ok ? [] : crop.refusals)];
  if (refusals.length > 0 || !crop.ok)
    return refused(...refusals.map((each) => ({ ...each, path: ["variety", ...each.path] })));
  const id = uuidv7();
  const name = sameName(given.name);
  await change.create("Variety", { id, name, nameKey: foldName(name), cropId: crop.value.id });
  return accepted({ id, name });
}

/** The steward who keeps the seed of a notebook; null where nobody is named. */
export async function bookedHolder(tx: Transaction, holder: string | null): Promise<Outcome<string | null>> {
  return holder === null ? accepted(null) : stewardNamed(tx, holder, "holder");
}
