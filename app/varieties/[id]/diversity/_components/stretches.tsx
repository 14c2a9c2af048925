import Link from "next/link";
import { Section } from "@/components/frame";
import { ExplainedHere, Measured } from "@/components/numbers";
import { SimpleTable } from "@/components/tables";
import { counted, listed } from "@/lib/display/plurals";
import type { GrowOutBehind } from "@/lib/registry/varieties/read-diversity";
import type { Stretch } from "@/lib/registry/varieties/stretches";
import { stretchExplanation } from "../_words/explain-figures";
import { sizeInWords } from "../_words/kept-in-words";

const columns = [
  { key: "years", name: "Sown" },
  { key: "growOuts", name: "Grow-outs", kind: "count" },
  { key: "hands", name: "Whose" },
  { key: "smallest", name: "Smallest" },
  { key: "together", name: "Together", kind: "count" },
] as const;

/** The grow-outs behind a lot in stretches, each with the one effective size that it comes to. */
export function Stretches({ stretches }: { stretches: readonly Stretch<GrowOutBehind>[] }) {
  return (
    <Section id="stretches" title="Stretch by stretch">
      <div className="stack">
        <p>
          A stretch is a run of grow-outs, each sown from the last, until lines join or part. Together they count as
          much as if each had had this one effective size.
        </p>
        <SimpleTable
          entries
          columns={columns}
          rows={stretches.map((stretch) => ({
            id: stretch.growOuts[0]?.id ?? "",
            cells: {
              years: yearsOf(stretch.growOuts),
              growOuts: String(stretch.growOuts.length),
              hands: handsOf(stretch.growOuts),
              smallest: <Smallest growOuts={stretch.growOuts} />,
              together: (
                <ExplainedHere explanation={stretchExplanation(stretch)}>
                  <Measured value={stretch.together ? sizeInWords(stretch.together) : null} />
                </ExplainedHere>
              ),
            },
          }))}
        />
      </div>
    </Section>
  );
}

function yearsOf(growOuts: readonly GrowOutBehind[]): string {
  const years = growOuts.flatMap(({ sownFirst }) => sownFirst?.slice(0, 4) ?? []);
  const [first, last] = [years[0], years.at(-1)];
  if (first === undefined || last === undefined) return "years not known";
  return first === last ? first : `${first}–${last}`;
}

function handsOf(growOuts: readonly GrowOutBehind[]): string {
  const hands = [...new Set(growOuts.flatMap(({ steward }) => steward ?? []))];
  if (hands.length > 3) return `${hands[0]} and ${counted(hands.length - 1, "other steward")}`;
  return listed(hands) || "not written";
}

function Smallest({ growOuts }: { growOuts: readonly GrowOutBehind[] }) {
  const least = growOuts.reduce<GrowOutBehind | null>((best, each) => {
    if (each.size === null) return best;
    return best?.size == null || each.size.low < best.size.low ? each : best;
  }, null);
  if (least === null) return <Measured value={null} />;
  return (
    <>
      {sizeInWords(least.size)}, <Link href={`/grow-outs/${least.id}`}>{least.name}</Link>
    </>
  );
}
