import { sameName } from "@/lib/registry/names/fold-name";
import { type Refusal, refusal } from "@/lib/science/outcome";
import { type Check, faultAt, grouped } from "./check";
import { type Entry, tainted } from "./entries";
import { isNew } from "./join-lines";

type Plant = Entry<"plants">;

/** The seed of each kept plant of the grow-outs whose seed shares say `plants`, by the grow-out's name for matching. */
export type SeedOfPlants = ReadonlyMap<string, readonly number[]>;

/**
 * A plant stands once. Where a grow-out's seed shares say `plants`, each kept plant has its seed, and there are as many as seed
 * parents. Gives the seed where all of it can be relied on.
 */
export function checkPlants(check: Check): SeedOfPlants {
  const plants = grouped(check.lines.plants, (plant) => plant.cells.grow_out);
  for (const own of plants.values()) checkOnce(check, own);
  const seed = new Map<string, readonly number[]>();
  const strays = new Strays(check.lines.plants);
  for (const growOut of check.entries.growOuts.bearers()) {
    if (growOut.cells.seed_shares !== "plants" || growOut.cells.grow_out === null) continue;
    const key = sameName(growOut.cells.grow_out);
    const own = plants.get(key) ?? [];
    if (!mine(growOut, own) || !check.drafts.plants.complete) continue;
    const fault = seedFault(growOut, own, strays);
    if (fault === "unsure") continue;
    if (fault === null) seed.set(key, seedOfKept(own));
    else faultAt(check, [growOut, ...own.filter(isNew).reverse()], "seed_shares", fault);
  }
  return seed;
}

/** What only the registry has is not looked at again. */
function mine(growOut: Entry<"growOuts">, plants: readonly Plant[]): boolean {
  return growOut.draft !== null || plants.some(isNew);
}

function checkOnce(check: Check, plants: readonly Plant[]): void {
  for (const same of grouped(plants, (plant) => plant.cells.plant).values()) {
    for (const [place, plant] of same.entries()) {
      if (place === 0 || !plant.draft) continue;
      plant.draft.faulty.add("plant");
      const first = same[0];
      const where = first?.draft ? `in line ${first.draft.origin.line}` : "in the registry with other cells";
      const wrong = `of ${plant.cells.grow_out} stands ${where} too`;
      const needed = "give each plant one line, and correct what the registry has there";
      const repeated = refusal("plant-twice", [], plant.cells.plant, wrong, needed);
      check.findings.fault({ ...plant.draft.origin, column: "plant" }, repeated);
    }
  }
}

function seedOfKept(plants: readonly Plant[]): number[] {
  return kept(plants).map((plant) => plant.cells.seed_grams ?? 0);
}

function kept(plants: readonly Plant[]): Plant[] {
  return plants.filter((plant) => plant.cells.kept === "yes");
}

function seedFault(growOut: Entry<"growOuts">, plants: readonly Plant[], strays: Strays): Refusal | "unsure" | null {
  if (tainted(growOut, "seed_shares", "seed_parents") || plants.some((plant) => tainted(plant, ...readColumns))) {
    return "unsure";
  }
  const all = kept(plants);
  const without = all.filter((plant) => plant.cells.seed_grams === null);
  if (without.length > 0) {
    const names = without.slice(0, 5).map((plant) => plant.cells.plant);
    const wrong = `needs the seed of every kept plant, and ${without.length} of ${all.length} have none`;
    const needed = `write seed_grams of plant ${names.join(", ")}${without.length > names.length ? " and the others" : ""}`;
    return refusal("seed-of-plant-missing", [], "plants", wrong, needed);
  }
  const wanted = growOut.cells.seed_parents;
  if (wanted === null || wanted === all.length) return null;
  if (strays.explain(wanted - all.length)) return "unsure";
  const wrong = `needs ${wanted} kept plants, as many as seed parents, and plants.csv has ${all.length}`;
  return refusal(
    "kept-plants-miscounted",
    [],
    "plants",
    wrong,
    "count the seed parents again, or the plants with kept = yes",
  );
}

const readColumns = ["plant", "kept", "seed_grams"];

/** Plants whose grow-out is not known: each may be missing somewhere, which then is no fault of its own. */
class Strays {
  #left: number;

  constructor(plants: readonly Plant[]) {
    this.#left = plants.filter((plant) => tainted(plant, "grow_out") && plant.cells.kept !== "no").length;
  }

  explain(missing: number): boolean {
    if (missing <= 0 || missing > this.#left) return false;
    this.#left -= missing;
    return true;
  }
}
