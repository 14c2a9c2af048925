import { uuidv7 } from "uuidv7";
import type { TableName } from "@/lib/registry/change-set/records";

interface Ground {
  readonly varietyId: string;
  readonly cropId: string;
  readonly growOutId: string;
  readonly stewardId: string;
}

/**
 * Plants with marks that were changed and scores of every sort: two versions of a trait, one of the crop and one that all share, two scorers
 * of one plant, a score that was replaced and one that was taken back.
 */
export async function fillPlants(
  put: (table: TableName, row: object) => Promise<unknown>,
  { varietyId, cropId, growOutId, stewardId }: Ground,
): Promise<void> {
  const on = { on: "2021-08", onFirst: "2021-08-01", onLast: "2021-08-31" };
  const at = { growOutId, cell: "B", row: "3", position: 4.5 };
  const plants = ["12", "12 (2)", "13"].map((name) => ({ id: uuidv7(), name, nameKey: name, ...at }));
  for (const plant of plants) await put("Plant", plant.name === "13" ? { ...plant, sameAsId: plants[0]?.id } : plant);
  const [one, other, third] = plants.map((plant) => plant.id) as [string, string, string];
  const first = uuidv7();
  await put("Mark", { id: first, plantId: one, tag: "12", intent: "watch", ...on });
  await put("Mark", { plantId: one, tag: "12", intent: "keep", ...on, words: "stood the gale", replacesId: first });
  await put("Mark", { plantId: other, tag: "12", intent: "pull", ...on, fate: "rogued later", stewardId });

  const vigour = { name: "vigour", nameKey: "vigour", kind: "scale", scaleLow: 1, scaleHigh: 9 };
  const [old, newer, height, shared] = [uuidv7(), uuidv7(), uuidv7(), uuidv7()];
  await put("Trait", { id: shared, name: "vigour", nameKey: "vigour", kind: "measure" });
  await put("Trait", { id: old, varietyId, version: 1, ...vigour, direction: "higher" });
  const wording = { wording: '{"steps":{"1":"weak","9":"strong, dark"}}', direction: "target", target: 7 };
  await put("Trait", { id: newer, varietyId, version: 2, previousId: old, ...vigour, ...wording });
  await put("Trait", { id: height, cropId, name: "height", nameKey: "height", kind: "measure", unit: "cm" });

  const wrong = uuidv7();
  await put("Score", { id: wrong, plantId: one, traitId: newer, value: 2 });
  await put("Score", { plantId: one, traitId: newer, value: 5, replacesId: wrong, on: "2021-08-20", stewardId });
  await put("Score", { plantId: one, traitId: newer, value: 7 });
  await put("Score", { plantId: one, traitId: shared, value: 3 });
  await put("Score", { plantId: other, traitId: old, value: 4 });
  await put("Score", { plantId: other, traitId: height, text: "leaning", on: "2021-08-20" });
  const back = uuidv7();
  await put("Score", { id: back, plantId: third, traitId: height, value: 120 });
  await put("Score", { plantId: third, traitId: height, value: 120, replacesId: back, takenBack: true });
  // plants.csv says all that there is to say of these two
  await put("Score", { plantId: third, traitId: newer, value: 6.5 });
  await put("Score", { plantId: other, traitId: newer, value: 8 });
}
