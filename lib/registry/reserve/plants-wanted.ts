/** How many plants one proper grow-out of a variety wants, and who says so. */
export interface PlantsWanted {
  readonly plants: number;
  readonly from: "variety" | "crop";
}

/** The variety's own number, else the fewest plants of its crop; null where neither is known. */
export function plantsWanted(variety: number | null, cropFewest: number | null): PlantsWanted | null {
  if (variety !== null) return { plants: variety, from: "variety" };
  return cropFewest === null ? null : { plants: cropFewest, from: "crop" };
}
