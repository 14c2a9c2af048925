import type { TableName } from "@/lib/registry/change-set/records";

interface Ground {
  readonly varietyId: string;
  readonly lotId: string;
  readonly growOutId: string;
  readonly stewardId: string;
  readonly testId: string;
  readonly plantId: string;
  readonly traitId: string;
  readonly ofCropId: string;
}

/** Rows of pictures of every sort of record; their files are not there. */
export async function fillPhotos(
  put: (table: TableName, row: object) => Promise<unknown>,
  { varietyId, lotId, growOutId, stewardId, testId, plantId, traitId, ofCropId }: Ground,
): Promise<void> {
  const measures = { width: 1600, height: 900, bytes: 2_000_000 };
  const hash = (letter: string) => ({ hash: letter.repeat(64), ...measures });
  await put("Photo", { ...hash("a"), varietyId, caption: 'said "keep it", and\nsmiled', takenOn: "1987~", stewardId });
  await put("Photo", { ...hash("b"), lotId });
  await put("Photo", { ...hash("c"), growOutId, plantId });
  await put("Photo", { ...hash("d"), testId });
  await put("Photo", { ...hash("e"), varietyId, traitId, scale: "7" });
  await put("Photo", { ...hash("f"), varietyId, traitId: ofCropId });
}
