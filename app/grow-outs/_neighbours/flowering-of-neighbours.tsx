import Link from "next/link";
import { FloweringStrip } from "@/components/flowering-strip";
import { Section } from "@/components/frame";
import { SimpleTable } from "@/components/tables";
import { stripInWords, stripOf } from "./drawn";
import type { GivenNeighbours } from "./given";
import { overlapWords, windowWords } from "./verdict-words";

const columns = [
  { key: "who", name: "What flowers" },
  { key: "window", name: "From when to when" },
  { key: "common", name: "Together with ours" },
] as const;

/** This grow-out's flowering over that of its neighbours: the strip, and the same in words. */
export function FloweringOfNeighbours({ read, assessment }: GivenNeighbours) {
  const { ground } = read;
  const { stigma, neighbours, receptive } = assessment;
  const rows = stripOf(assessment);
  const own = rows.filter((row) => row.of !== "neighbour");
  const known = own.length > 0 || neighbours.some((each) => each.window !== null);
  return (
    <Section
      id="flowering"
      title="Flowering"
      aside={<Link href={`/grow-outs/${ground.id}/flowering`}>note the flowering of this grow-out</Link>}
    >
      {known ? (
        <div className="stack">
          <FloweringStrip rows={rows} label={stripInWords(assessment)} />
          {stigma === null ? (
            <p className="quiet">
              The flowering of this grow-out itself is not noted: days in common are not known. The last flower is what
              is most often forgotten.
            </p>
          ) : null}
          <SimpleTable
            columns={columns}
            rows={[
              ...own.map((row) => ({
                id: row.id,
                cells: {
                  who: row.name,
                  window: windowWords(row.of === "stigma" ? stigma : assessment.ownPollen),
                  common: "",
                },
              })),
              ...neighbours.map((each, index) => ({
                id: each.neighbour.id,
                cells: {
                  who: `${index + 1} ${each.neighbour.what}`,
                  window: `${windowWords(each.window)}${each.window?.by === "told" ? " (told)" : ""}`,
                  common: each.overlap?.most === 0 ? "none" : overlapWords(each.overlap, receptive),
                },
              })),
            ]}
          />
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
