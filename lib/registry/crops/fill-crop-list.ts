import { uuidv7 } from "uuidv7";
import { ownerHere } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { type CropProfile, cropList } from "@/lib/science/crops/crop-profile";
import { crossingPairs } from "@/lib/science/crops/crossing-pairs";
import { clonal } from "@/lib/science/crops/mating";
import { accepted, type Outcome } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import type { NewRowOf, PatchOf } from "../change-set/records";
import { foldName } from "../names/fold-name";

/** Brings the registry's crops and crossing groups up to the release's list. A steward's own values stand apart and are not touched. */
export async function fillCropList(db: Database): Promise<Outcome<Performed<null>>> {
  const title = "The crop list of this release";
  return perform(
    db,
    { ...ownerHere(), name: "the crop list" },
    { action: "settings", kind: "start", title },
    async (change, tx) => {
      const groups = new Map((await tx.crossingGroup.findMany()).map((group) => [group.key, group.id]));
      const missing = [
        ...new Set([
          ...crossingPairs().map((pair) => pair.group),
          ...cropList().flatMap((crop) => crop.crossingGroup ?? []),
        ]),
      ]
        .filter((key) => !groups.has(key))
        .map((key) => ({ id: uuidv7(), key }));
      await change.create("CrossingGroup", ...missing);
      for (const group of missing) groups.set(group.key, group.id);

      if ((await tx.crossingPair.count()) === 0) {
        const pairs = crossingPairs().map(({ group, cropKeysA, cropKeysB, ...pair }) => ({
          id: uuidv7(),
          crossingGroupId: groups.get(group) as string,
          ...pair,
          cropKeysA: cropKeysA.join(" "),
          cropKeysB: cropKeysB.join(" "),
        }));
        await change.create("CrossingPair", ...pairs);
      }

      const known = new Map(
        (await tx.crop.findMany({ select: { key: true, id: true } })).map((crop) => [crop.key, crop.id]),
      );
      const rows = cropList().map((profile) => ({
        ...rowOfProfile(profile),
        crossingGroupId: groups.get(profile.crossingGroup ?? "") ?? null,
      }));
      await change.create(
        "Crop",
        ...rows.filter((row) => !known.has(row.key)).map((row) => ({ id: uuidv7(), ...row })),
      );
      const stale = rows.flatMap((row) => {
        const id = known.get(row.key);
        return id ? [{ id, patch: row as PatchOf<"Crop"> }] : [];
      });
      await change.updateMany("Crop", stale);
      return accepted(null);
    },
  );
}

function rowOfProfile(profile: CropProfile): Omit<NewRowOf<"Crop">, "id" | "crossingGroupId"> {
  const { notes, crossingGroup: _group, ...columns } = profile;
  return {
    ...columns,
    commonNameKey: foldName(profile.commonName),
    own: false,
    clonal: clonal(profile),
    dryStorage: true,
    notes: JSON.stringify(notes),
  };
}
