import Link from "next/link";
import { Section } from "@/components/frame";
import { ExplainedHere, Measured } from "@/components/numbers";
import { SimpleTable } from "@/components/tables";
import { dateInWords } from "@/lib/display/dates";
import type { GrowOutBehind } from "@/lib/registry/varieties/read-diversity";
import type { LotOfVariety } from "@/lib/registry/varieties/read-variety";
import { costExplanation, costInWords, plannedInWords, plantsInWords } from "../_words/explain-figures";
import { sizeInWords } from "../_words/kept-in-words";
import styles from "./diversity.module.css";

/** So many stand at first; the others, which cost least, are folded away. */
const shownAtFirst = 8;

/** What each grow-out behind a lot cost it, the dearest first. */
export function Bottlenecks({ lot, growOuts }: { lot: LotOfVariety; growOuts: readonly GrowOutBehind[] }) {
  const costOf = ({ cost }: GrowOutBehind) => cost?.nativeCost ?? cost?.cost ?? null;
  const dearest = [...growOuts].sort(
    (a, b) => (costOf(b) ?? Number.NEGATIVE_INFINITY) - (costOf(a) ?? Number.NEGATIVE_INFINITY),
  );
  const known = growOuts.some((each) => each.cost !== null);
  const rest = dearest.slice(shownAtFirst);
  return (
    <Section id="bottlenecks" title="What each grow-out cost it">
      <div className="stack">
        <p>
          {known
            ? `How much more of its own diversity lot ${lot.number} would keep, in points of a hundred, had that grow-out alone been as large as planned.`
            : "What a grow-out cost can be told only where the plants of every grow-out behind the lot were written down."}
        </p>
        <CostTable lot={lot} growOuts={dearest.slice(0, shownAtFirst)} />
        {rest.length > 0 ? (
          <details className="whole-on-paper">
            <summary>{rest.length} more, which cost less</summary>
            <CostTable lot={lot} growOuts={rest} />
          </details>
        ) : null}
      </div>
    </Section>
  );
}

const columns = [
  { key: "growOut", name: "Grow-out" },
  { key: "sown", name: "Sown" },
  { key: "plants", name: "As it was" },
  { key: "size", name: "Effective size", kind: "count" },
  { key: "planned", name: "As planned" },
  { key: "cost", name: "Cost", kind: "count" },
] as const;

function CostTable({ lot, growOuts }: { lot: LotOfVariety; growOuts: readonly GrowOutBehind[] }) {
  return (
    <div className={styles.costs}>
      <SimpleTable
        entries
        columns={columns}
        rows={growOuts.map((each) => ({
          id: each.id,
          cells: {
            growOut: <Link href={`/grow-outs/${each.id}`}>{each.name}</Link>,
            sown: each.sown === null ? <Measured value={null} /> : dateInWords(each.sown),
            plants: plantsInWords(each),
            size: <Measured value={each.size ? sizeInWords(each.size) : null} />,
            planned: plannedInWords(each),
            cost: (
              <ExplainedHere explanation={costExplanation(lot, each)}>
                <Measured value={each.cost === null && each.planned !== null ? null : costInWords(each)} />
              </ExplainedHere>
            ),
          },
        }))}
      />
    </div>
  );
}
