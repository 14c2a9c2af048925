import { type CropField, cropFieldNames, cropFields } from "@/lib/schemas/crops/crop-fields";
import type { RowOf } from "../change-set/records";

/** The columns of a crop that its profile has. */
export type CropColumns = Pick<RowOf<"Crop">, CropField>;

/** One own value of a steward, as it is stored. */
export type OwnValue = Pick<RowOf<"CropOverride">, "field" | "value" | "reason" | "source">;

/** The stored text of an own value as the column's kind of value. */
export function valueOfOwn(field: CropField, text: string): string | number {
  const { kind } = cropFields[field];
  return kind === "number" || kind === "whole" ? Number(text) : text;
}

/** A crop's profile as it holds here: the list's values, with the steward's own in their place. */
export function profileOfCrop<C extends Partial<CropColumns>>(
  crop: C,
  own: readonly Pick<OwnValue, "field" | "value">[],
): C {
  const patch: Record<string, string | number> = {};
  for (const each of own) {
    const field = cropFieldNames.find((name) => name === each.field);
    if (field && field in crop) patch[field] = valueOfOwn(field, each.value);
  }
  return { ...crop, ...patch };
}
