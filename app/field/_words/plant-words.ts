import type { PlantInField } from "@/lib/schemas/field/field-records";

/** Where a plant stands: "cell B, row 3, plant 12"; "place" where nobody said. */
export function placeInWords({ cell, row, position }: Pick<PlantInField, "cell" | "row" | "position">): string {
  const parts = [cell && `cell ${cell}`, row && `row ${row}`, position !== null && `plant ${position}`].filter(Boolean);
  return parts.length === 0 ? "Place not said" : parts.join(", ");
}
