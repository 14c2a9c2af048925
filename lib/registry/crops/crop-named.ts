import { uuidv7 } from "uuidv7";
import type { Transaction } from "@/lib/db";
import { cropList } from "@/lib/science/crops/crop-profile";
import { cropsByWord } from "@/lib/science/crops/crops-by-word";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import type { RowOf } from "../change-set/records";
import type { ChangeWriter } from "../change-set/writer";
import { foldName, sameName } from "../names/fold-name";
import { nearest } from "../search/edit-distance";

/** The crop that a person names by its key or common name, in any letter case; null where none has that name. */
export async function cropNamed(tx: Transaction, name: string): Promise<RowOf<"Crop"> | null> {
  const key = foldName(name);
  return tx.crop.findFirst({ where: { OR: [{ commonNameKey: key }, { key }] } });
}

/**
 * The crop by its name, or one of the steward's own with an empty profile where `own` is wanted. Refused, with the nearest names of
 * the list, where no crop is so called and none is to be made.
 */
export async function cropNamedOrOwn(
  change: ChangeWriter,
  tx: Transaction,
  name: string,
  own: boolean,
): Promise<Outcome<Pick<RowOf<"Crop">, "id" | "commonName" | "clonal">>> {
  const found = await cropNamed(tx, name);
  if (found) return accepted(found);
  if (!own) {
    const names = await tx.crop.findMany({ select: { commonName: true } });
    const slips = nearest(
      foldName(name),
      names.map((crop) => crop.commonName),
      foldName,
    );
    const near = slips.length > 0 ? slips : cropsByWord(name, cropList()).map((crop) => crop.commonName);
    const meant = near.length > 0 ? `did you mean ${near.map((each) => `"${each}"`).join(" or ")}? ` : "";
    const needed = `${meant}choose one of the list, or say that it is a crop of your own`;
    return refused(refusal("unknown-crop", ["crop"], name, "is no crop of the list", needed));
  }
  const row = {
    id: uuidv7(),
    key: foldName(name),
    commonName: sameName(name),
    commonNameKey: foldName(name),
    own: true,
  };
  await change.create("Crop", row);
  return accepted({ id: row.id, commonName: row.commonName, clonal: false });
}
