import { type ScoredPlant, scoreOf, type WeightedTrait } from "./scored-plant";

/** What differs by less than this part of the values differs by rounding alone. */
const ROUNDING = 1e-12;

/**
 * Each plant's deviation from the mean of its cell in pooled standard deviations, in the order of the plants; null where there is no
 * comparison: the trait was not scored, or no other plant of the cell has it.
 *
 *     d = v − mean of the cell;  s = √(Σ d²/(plants − cells));  z = d/s, 0 at s = 0
 */
export function comparedWithNeighbours(
  plants: readonly ScoredPlant[],
  trait: WeightedTrait,
  withinCells: boolean,
): (number | null)[] {
  const values = plants.map((plant) => goodness(scoreOf(plant, trait.key), trait.better));
  const cells = new Map<string, number[]>();
  plants.forEach(({ cell }, place) => {
    if (values[place] === null || (withinCells && cell === undefined)) return;
    const key = withinCells ? (cell ?? "") : "";
    cells.set(key, [...(cells.get(key) ?? []), place]);
  });
  const deviations: (number | null)[] = plants.map(() => null);
  let squares = 0;
  let degrees = 0;
  for (const places of cells.values()) {
    if (places.length < 2) continue;
    const of = places.map((place) => values[place] ?? 0);
    const largest = Math.max(...of.map(Math.abs));
    const middle = of.reduce((sum, value) => sum + value, 0) / of.length;
    places.forEach((place, at) => {
      const difference = (of[at] ?? 0) - middle;
      const d = Math.abs(difference) <= ROUNDING * largest ? 0 : difference;
      deviations[place] = d;
      squares += d * d;
    });
    degrees += places.length - 1;
  }
  const s = degrees === 0 ? 0 : Math.sqrt(squares / degrees);
  return deviations.map((d) => (d === null ? null : s === 0 ? 0 : d / s));
}

function goodness(score: number | null, better: WeightedTrait["better"]): number | null {
  if (score === null) return null;
  if (better === "higher") return score;
  return better === "lower" ? -score : -Math.abs(score - better.target);
}
