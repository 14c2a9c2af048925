import { FloweringStrip } from "@/components/flowering-strip";
import { Section } from "@/components/frame";
import { Way } from "@/components/ui/offered";
import { stripInWords, stripOf } from "./drawn";
import type { GivenNeighbours } from "./given";
import { overlapWords, windowWords } from "./verdict-words";

/** This grow-out's flowering over that of its neighbours, by the day; the neighbours' own days stand with each of them in words. */
export function FloweringOfNeighbours({ read, assessment }: GivenNeighbours) {
  const { ground } = read;
  const { stigma, ownPollen, neighbours, receptive } = assessment;
  const rows = stripOf(assessment);
  const known = rows.some(({ window }) => window.from !== null || window.to !== null);
  return (
    <Section
      id="flowering"
      title="Flowering"
      aside={<Way href={`/grow-outs/${ground.id}/flowering`}>note the flowering of this grow-out</Way>}
    >
      {known ? (
        <div className="stack">
          {stigma === null ? (
            <p>
              The flowering of this grow-out itself is not noted: days in common are not known. The last flower is what
              is most often forgotten.
            </p>
          ) : (
            <p>
              Ours received pollen {windowWords(stigma)}
              {receptive?.most ? ` (${overlapWords(receptive, null)})` : ""} and shed it {windowWords(ownPollen)}.
              {neighbours.length > 0 ? " Framed and hatched: the days on which a neighbour may have reached it." : ""}
            </p>
          )}
          <FloweringStrip rows={rows} label={stripInWords(assessment)} />
        </div>
      ) : (
        <p className="quiet">
          Neither the flowering of this grow-out nor that of a neighbour is noted. First, half and last flower, for
          maize pollen and silk apart, tell whether the isolation was real.
        </p>
      )}
    </Section>
  );
}
