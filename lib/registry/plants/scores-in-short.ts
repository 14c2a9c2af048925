import type { PlantOfGrowOut, StandingScore } from "../grow-outs/plants-of-grow-out";
import type { TraitLine, TraitVersion } from "../traits/list-traits";

/** What was scored by one version of a trait. Versions are never mixed, and two people's scores are not made one. */
export interface ScoresInShort {
  readonly trait: TraitVersion;
  /** true where a newer version stands */
  readonly old: boolean;
  /** plants that have a score */
  readonly plants: number;
  /** scores by who gave them; null: not said */
  readonly by: ReadonlyMap<string | null, number>;
  /** the lowest and the highest of scores that are numbers */
  readonly ends: readonly [number, number] | null;
  /** how often each answer was given, of scores that are words; in the order in which they first came */
  readonly answers: ReadonlyMap<string, number>;
}

/** The scores of a grow-out by trait and version, without those by which nothing was scored. */
export function scoresInShort(plants: readonly PlantOfGrowOut[], traits: readonly TraitLine[]): ScoresInShort[] {
  return traits.flatMap((line) =>
    line.versions.flatMap((trait): ScoresInShort[] => {
      const own = plants.map((plant) =>
        (plant.scores.get(line.id) ?? []).filter((score) => score.traitId === trait.id),
      );
      const scores = own.flat();
      if (scores.length === 0) return [];
      const numbers = scores.flatMap((score) => score.value ?? []);
      return [
        {
          trait,
          old: trait.id !== line.newest.id,
          plants: own.filter((each) => each.length > 0).length,
          by: counts(scores, (score) => score.stewardId),
          ends: numbers.length === 0 ? null : [Math.min(...numbers), Math.max(...numbers)],
          answers: counts(
            scores.filter((score) => score.text !== null),
            (score) => score.text ?? "",
          ),
        },
      ];
    }),
  );
}

function counts<K>(scores: readonly StandingScore[], keyOf: (score: StandingScore) => K): Map<K, number> {
  const found = new Map<K, number>();
  for (const score of scores) found.set(keyOf(score), (found.get(keyOf(score)) ?? 0) + 1);
  return found;
}
