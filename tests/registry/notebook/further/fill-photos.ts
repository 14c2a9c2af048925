import type { Transaction } from "@/lib/db";
import type { TableName } from "@/lib/registry/change-set/records";

/** Rows of pictures of every sort of record that stands; their files are not there. */
export async function fillPhotos(
  tx: Transaction,
  put: (table: TableName, row: object) => Promise<unknown>,
): Promise<void> {
  const lot = await tx.lot.findFirstOrThrow({ where: { number: "M 1" } });
  const { stewardId } = await tx.person.findFirstOrThrow({ where: { name: "Osk Tarn" } });
  const plant = await tx.plant.findFirstOrThrow({ where: { name: "12 (2)" } });
  const test = await tx.germinationTest.findFirstOrThrow({ where: { name: "P1" } });
  const { varietyId } = lot;
  const trait = await tx.trait.findFirstOrThrow({ where: { varietyId, version: 2 } });
  const ofCrop = await tx.trait.findFirstOrThrow({ where: { cropId: { not: null } } });
  const hash = (letter: string) => ({ hash: letter.repeat(64), width: 1600, height: 900, bytes: 2_000_000 });
  await put("Photo", { ...hash("a"), varietyId, caption: 'said "keep it", and\nsmiled', takenOn: "1987~", stewardId });
  await put("Photo", { ...hash("b"), lotId: lot.id });
  await put("Photo", { ...hash("c"), growOutId: plant.growOutId, plantId: plant.id });
  await put("Photo", { ...hash("d"), testId: test.id });
  await put("Photo", { ...hash("e"), varietyId, traitId: trait.id, scale: "7" });
  await put("Photo", { ...hash("f"), varietyId, traitId: ofCrop.id });
}
