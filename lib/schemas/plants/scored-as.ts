import type { ScoredPlant } from "@/lib/science/selection/scored-plant";
import type { ChoiceGround, ScoreToCompare } from "./choice-ground";

/** Whose scores count: the mean of all who scored a plant, or one person's alone (null: those of which nobody said whose they are). */
export type ScoresOf = "all" | { readonly person: string | null };

/** The plants as they are compared by these scores. A plant that the person has not scored has none. */
export function plantsAsScored(
  { plants, traits }: Pick<ChoiceGround, "plants" | "traits">,
  of: ScoresOf,
): ScoredPlant[] {
  return plants.map(({ id, cell, scores }) => ({
    id,
    ...(cell === null ? {} : { cell }),
    scores: Object.fromEntries(traits.map(({ key }) => [key, scoreBy(scores[key] ?? [], of)])),
  }));
}

function scoreBy(scores: readonly ScoreToCompare[], of: ScoresOf): number | null {
  const counted = of === "all" ? scores : scores.filter(({ by }) => by === of.person);
  return counted.length === 0 ? null : counted.reduce((sum, { value }) => sum + value, 0) / counted.length;
}

/** Two people and the plants that both scored by one trait. */
export interface BothScored {
  readonly trait: string;
  readonly first: string | null;
  readonly second: string | null;
  readonly pairs: readonly (readonly [number, number])[];
}

/** Every two people who scored some same plants by one trait, in the order of traits and people. */
export function bothScored({
  plants,
  traits,
  people,
}: Pick<ChoiceGround, "plants" | "traits" | "people">): BothScored[] {
  return traits.flatMap(({ key }) =>
    people.flatMap(({ id: first }, at) =>
      people.slice(at + 1).flatMap(({ id: second }): BothScored[] => {
        const pairs = plants.flatMap(({ scores }) => {
          const of = (person: string | null) => scores[key]?.find(({ by }) => by === person)?.value;
          const [one, other] = [of(first), of(second)];
          return one === undefined || other === undefined ? [] : [[one, other] as const];
        });
        return pairs.length === 0 ? [] : [{ trait: key, first, second, pairs }];
      }),
    ),
  );
}

/** Cells in which some plants were scored by one person and some by another alone: their difference may be the scorers'. */
export function cellsOfMixedScorers({ plants, traits }: Pick<ChoiceGround, "plants" | "traits">): string[] {
  const mixed = new Set<string>();
  for (const { key } of traits) {
    const seen = new Map<string, string>();
    for (const { cell, scores } of plants) {
      const by = (scores[key] ?? [])
        .map((score) => score.by ?? "")
        .sort()
        .join(" ");
      if (cell === null || (scores[key] ?? []).length === 0) continue;
      if (seen.has(cell) && seen.get(cell) !== by) mixed.add(cell);
      seen.set(cell, by);
    }
  }
  return [...mixed];
}
