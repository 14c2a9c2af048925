import Link from "next/link";
import { SimpleTable } from "@/components/tables";
import { listed } from "@/lib/display/plurals";
import { directionInWords, scoreInWords, stepsInWords } from "@/lib/display/scores";
import type { PlantOfGrowOut } from "@/lib/registry/grow-outs/plants-of-grow-out";
import { type ScoresInShort, scoresInShort } from "@/lib/registry/plants/scores-in-short";
import type { TraitLine } from "@/lib/registry/traits/list-traits";

const columns = [
  { key: "trait", name: "Trait" },
  { key: "plants", name: "Scored", kind: "count" },
  { key: "scores", name: "Scores" },
  { key: "by", name: "By" },
] as const;

/** What was scored and by whom, a line a trait and version; a scale with the words of its steps. */
export function ScoresOfPlants({
  plants,
  traits,
  people,
  varietyId,
}: {
  plants: readonly PlantOfGrowOut[];
  traits: readonly TraitLine[];
  people: ReadonlyMap<string, string>;
  varietyId: string;
}) {
  const scored = scoresInShort(plants, traits);
  if (scored.length === 0) return null;
  return (
    <SimpleTable
      columns={columns}
      entries
      rows={scored.map((scores) => ({
        id: scores.trait.id,
        cells: {
          trait: (
            <>
              <Link href={`/varieties/${varietyId}/traits`}>{scores.trait.name}</Link>
              {scores.old ? `, version ${scores.trait.version}` : ""}
              {meaning(scores) === "" ? null : <p className="quiet">{meaning(scores)}</p>}
            </>
          ),
          plants: `${scores.plants} of ${plants.length}`,
          scores: said(scores),
          by: by(scores, people),
        },
      }))}
    />
  );
}

function meaning({ trait }: ScoresInShort): string {
  return [trait.direction === null ? "" : directionInWords(trait), stepsInWords(trait)].filter(Boolean).join("; ");
}

const mostAnswers = 6;

/** "from 4 to 9, strong"; "yes in 12, no in 5". */
function said({ trait, ends, answers }: ScoresInShort): string {
  const [low, high] = (ends ?? []).map((value) => scoreInWords(trait, { value, text: null }));
  const numbers = ends === null ? [] : [low === high ? `all ${low}` : `from ${low} to ${high}`];
  const often = [...answers].sort(([, one], [, other]) => other - one);
  const words = often
    .slice(0, mostAnswers)
    .map(([text, count]) => `${scoreInWords(trait, { value: null, text })} in ${count}`);
  const more = often.length > mostAnswers ? [`${often.length - mostAnswers} other answers`] : [];
  return listed([...numbers, ...words, ...more]);
}

function by({ by: counts }: ScoresInShort, people: ReadonlyMap<string, string>): string {
  const name = (stewardId: string | null) => (stewardId === null ? "not said" : (people.get(stewardId) ?? "a steward"));
  if (counts.size === 1) return [...counts.keys()].map(name).join("");
  return listed([...counts].map(([stewardId, count]) => `${name(stewardId)} (${count})`));
}
