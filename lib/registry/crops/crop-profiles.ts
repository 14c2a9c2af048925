import type { Client, Transaction } from "@/lib/db";
import type { CropProfile } from "@/lib/science/crops/crop-profile";
import { profileOfCrop } from "./profile-of-crop";

/** The profiles of all crops of the registry, a steward's own values in their place. */
export async function cropProfiles(db: Client | Transaction): Promise<CropProfile[]> {
  const crops = await db.crop.findMany({
    include: { overrides: true, crossingGroup: { select: { key: true } } },
    orderBy: { id: "asc" },
  });
  return crops.map(({ overrides, crossingGroup, notes, ...crop }) => ({
    ...profileOfCrop(crop, overrides),
    crossingGroup: crossingGroup?.key ?? null,
    notes: notes === null ? {} : (JSON.parse(notes) as Record<string, string>),
  }));
}
