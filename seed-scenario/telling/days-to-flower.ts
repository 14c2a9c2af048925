import type { Book } from "./book";
import { Draws } from "./draws";
import type { GrowOut } from "./grow-out";

/** Days by which plants of one grow-out flower apart. */
const spread = 7;
const cells = ["A", "B", "C"];

/**
 * The days from sowing to the first flower, plant by plant, of a grow-out that flowered about so many days after sowing. Of those of which
 * seed was kept the earliest of each cell were taken.
 */
export function countDaysToFlower(
  book: Book,
  { name }: GrowOut,
  told: { mean: number; plants: number; kept: number },
): void {
  const draws = new Draws(`days to flower ${name}`);
  const plants = Array.from({ length: told.plants }, (_, place) => ({
    cell: cells[place % cells.length] ?? "A",
    days: Math.round(told.mean + draws.near(spread, 1) - spread),
  }));
  const byCell = cells.flatMap((cell) => {
    const own = plants.filter((plant) => plant.cell === cell).sort((one, other) => one.days - other.days);
    return own.map((plant, rank) => ({ plant, rank: rank / own.length }));
  });
  const earliest = [...byCell].sort((one, other) => one.rank - other.rank).slice(0, told.kept);
  const kept = new Set(earliest.map(({ plant }) => plant));
  plants.forEach((plant, place) => {
    book.write("plants.csv", {
      grow_out: name,
      plant: String(place + 1),
      cell: plant.cell,
      kept: kept.has(plant) ? "yes" : "no",
      "score:days to flower": plant.days,
    });
  });
}
