import type { ChoiceGround, PlantToChoose, TraitToWeigh } from "@/lib/schemas/plants/choice-ground";
import { plantsAsScored, type ScoresOf } from "@/lib/schemas/plants/scored-as";
import type { EffectiveSizeSpan } from "@/lib/science/effective-size/effective-size-span";
import { sizeOfCut } from "@/lib/science/effective-size/size-of-cut";
import type { Outcome } from "@/lib/science/outcome";
import { type ChoiceOfPlants, choiceOfPlants } from "@/lib/science/selection/choice-of-plants";
import { type ResponseSpan, responseToDifferential } from "@/lib/science/selection/response-to-differential";
import type { ScoredPlant } from "@/lib/science/selection/scored-plant";
import { keepOf, pollenOf, type Setting, weightOf } from "./setting";

/** Effective sizes of every cut, from one plant to all that may be kept: seed of each alike. */
export type SizesOfCuts = readonly (Outcome<EffectiveSizeSpan> | null)[];

/** The choice by a setting. Works out nothing but ranks and cut; what depends on the number kept alone is sizesOfCuts. */
export function choiceBy(
  ground: ChoiceGround,
  setting: Setting,
  scored: readonly ScoredPlant[],
): Outcome<ChoiceOfPlants> {
  const byName = new Map(ground.plants.map(({ name, id }) => [name, id]));
  const ids = (names: readonly string[]) => names.flatMap((name) => byName.get(name) ?? []);
  const gone = ground.plants.flatMap(({ id, gone: why }) => (why === null ? [] : [id]));
  return choiceOfPlants({
    plants: scored,
    traits: ground.traits.flatMap((trait) => {
      const weight = weightOf(setting, trait);
      return trait.better === null || weight === 0 ? [] : [{ key: trait.key, weight, better: trait.better }];
    }),
    keep: keepOf(setting, ground),
    withinCells: setting.withinCells,
    barred: new Set([...gone, ...ids(Object.keys(setting.leftOut))]),
    taken: new Set(ids(setting.taken)),
  });
}

export function scoredBy(ground: ChoiceGround, of: ScoresOf): ScoredPlant[] {
  return plantsAsScored(ground, of);
}

/** The effective size for each number kept, in order; null where seed does not mix the plants. */
export function sizesOfCuts(ground: ChoiceGround, pollen: "all" | "kept", most: number): SizesOfCuts {
  return Array.from({ length: most }, (_, place) =>
    ground.plot === null ? null : sizeOfCut(ground.plot, { kept: place + 1, pollen, shares: "equal" }),
  );
}

/** A cell with its plants as the choice leaves them. */
export interface CellOfChoice {
  readonly cell: string | null;
  readonly plants: readonly PlantToChoose[];
  readonly kept: number;
}

/** The cells in the order in which they first come, plants without one last. */
export function cellsOfChoice({ plants }: ChoiceGround, kept: ReadonlySet<string>): CellOfChoice[] {
  const cells = new Map<string | null, PlantToChoose[]>();
  for (const plant of plants) cells.set(plant.cell, [...(cells.get(plant.cell) ?? []), plant]);
  return [...cells]
    .sort(([one], [other]) => Number(one === null) - Number(other === null))
    .map(([cell, own]) => ({ cell, plants: own, kept: own.filter(({ id }) => kept.has(id)).length }));
}

/** What stayed of earlier choices, as a span to be said, in hundredths; null where nothing was found. */
export function heritabilityOffered({ heritability }: TraitToWeigh): readonly [number, number] | null {
  return heritability && [Number(heritability.low.toFixed(2)), Number(heritability.high.toFixed(2))];
}

/** What one year may bring in a trait; null where none of the kept was compared by it. Where nobody said a heritability: from nothing to all of it. */
export function responseOf(
  key: string,
  choice: ChoiceOfPlants,
  ground: ChoiceGround,
  setting: Setting,
): {
  readonly span: ResponseSpan;
  readonly heritability: readonly [number, number];
  readonly from: "said" | "unknown";
} | null {
  const stands = choice.differential.get(key) ?? null;
  if (stands === null) return null;
  const said = setting.heritability[key];
  const [low, high] = said ?? [0, 1];
  const span = responseToDifferential({
    differential: stands.differential,
    heritability: { low, high },
    control: pollenOf(setting, ground) === "kept" ? "both-parents" : "seed-parents",
    selfingRate: ground.plot?.selfingRate ?? 0,
  });
  if (!span.ok) return null;
  return { span: span.value, heritability: [low, high], from: said ? "said" : "unknown" };
}
