import type { Database } from "@/lib/db";
import { type CropField, cropFieldNames } from "@/lib/schemas/crops/crop-fields";
import { valueOfOwn } from "./profile-of-crop";
import { type SourceOfValue, sourcesOfField } from "./source-marks";

/** One field of a crop's profile as a page shows it. */
export interface CropFieldRead {
  readonly field: CropField;
  /** what the list says; null: the list does not know */
  readonly listed: string | number | null;
  readonly sources: readonly SourceOfValue[];
  readonly own: { id: string; value: string | number; reason: string; source: string | null } | null;
}

/** A crop with its profile, field by field, its sources and the steward's own values. */
export interface CropRead {
  readonly id: string;
  readonly key: string;
  readonly commonName: string;
  readonly own: boolean;
  readonly clonal: boolean;
  readonly crossingGroup: string | null;
  readonly notes: Readonly<Record<string, string>>;
  readonly fields: readonly CropFieldRead[];
  readonly varieties: readonly { id: string; name: string; seedCoat: string | null }[];
}

/** Reads a crop by its key or id; null where there is none. */
export async function readCrop(db: Database, keyOrId: string): Promise<CropRead | null> {
  const crop = await db.read.crop.findFirst({
    where: { OR: [{ key: keyOrId }, { id: keyOrId }] },
    include: {
      overrides: true,
      crossingGroup: true,
      varieties: { select: { id: true, name: true, seedCoat: true }, orderBy: { nameKey: "asc" } },
    },
  });
  if (!crop) return null;
  const fields = cropFieldNames.map((field): CropFieldRead => {
    const listed = crop[field];
    const own = crop.overrides.find((each) => each.field === field);
    return {
      field,
      listed,
      sources: listed === null ? [] : sourcesOfField(crop.sources, field),
      own: own ? { id: own.id, value: valueOfOwn(field, own.value), reason: own.reason, source: own.source } : null,
    };
  });
  return {
    id: crop.id,
    key: crop.key,
    commonName: crop.commonName,
    own: crop.own,
    clonal: crop.clonal,
    crossingGroup: crop.crossingGroup?.key ?? null,
    notes: crop.notes === null ? {} : (JSON.parse(crop.notes) as Record<string, string>),
    fields,
    varieties: crop.varieties,
  };
}
