import { type ScoredPlant, scoreOf } from "./scored-plant";

export interface DifferentialWithinCells {
  /** in the trait's own unit */
  readonly differential: number;
  /** kept plants that were compared */
  readonly plants: number;
}

/**
 * How far the kept stand above their own neighbours in one trait: the selection differential without the soil.
 *
 *     S = mean over the kept of (x − mean of its cell)
 *
 * The mean of a cell is of all its scored plants, the kept among them; a plant that is alone in its cell, or has no cell, or was not scored is not
 * counted (`withinCells` false: the whole field is one cell). Null where no kept plant was compared.
 * Example: 182 of 182 175 168 171, 158 of 150 158 144 148, 201 of 201 190 195 186: S = (8 + 8 + 8)/3.
 * Source: Gardner 1961, Crop Sci. 1:241-245; Falconer & Mackay 1996, Introduction to Quantitative Genetics, ch. 11.
 */
export function differentialWithinCells(
  plants: readonly ScoredPlant[],
  key: string,
  kept: ReadonlySet<string>,
  withinCells: boolean,
): DifferentialWithinCells | null {
  const cells = new Map<string, { sum: number; count: number }>();
  const cellOf = ({ cell }: ScoredPlant) => (withinCells ? cell : "");
  for (const plant of plants) {
    const [cell, score] = [cellOf(plant), scoreOf(plant, key)];
    if (cell === undefined || score === null) continue;
    const before = cells.get(cell) ?? { sum: 0, count: 0 };
    cells.set(cell, { sum: before.sum + score, count: before.count + 1 });
  }
  let sum = 0;
  let compared = 0;
  for (const plant of plants) {
    const [cell, score] = [cellOf(plant), scoreOf(plant, key)];
    if (!kept.has(plant.id) || cell === undefined || score === null) continue;
    const own = cells.get(cell);
    if (own === undefined || own.count < 2) continue;
    sum += score - own.sum / own.count;
    compared += 1;
  }
  return compared === 0 ? null : { differential: sum / compared, plants: compared };
}
