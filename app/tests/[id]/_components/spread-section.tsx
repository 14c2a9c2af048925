import { Section } from "@/components/frame";
import { Explained } from "@/components/numbers";
import { plainNumber } from "@/lib/display/numbers";
import type { ReadTest } from "@/lib/registry/germination-tests/read-germination-test";
import type { PublishedTolerance } from "@/lib/science/germination/published-tolerance";
import type { ReplicateSpread } from "@/lib/science/germination/replicate-spread";
import { bindingRuleInWords, spreadInWords } from "../../_words/reading-in-words";
import { spreadExplanation } from "./explanations";

/** Whether the replicates are alike, by the exact test, and beside it what the published table says and whom it binds. */
export function SpreadSection({ read, spread }: { read: ReadTest; spread: ReplicateSpread }) {
  const { published } = read;
  return (
    <Section id="spread" title="Are the replicates alike?">
      <Explained explanation={spreadExplanation(spread, "the likeness of the replicates")}>
        <span className={spread.consistent ? undefined : "waits"}>{spreadInWords(spread, read.replicates.length)}</span>
      </Explained>
      {published ? (
        <p>
          {publishedInWords(published)} {bindingRuleInWords()}
        </p>
      ) : null}
    </Section>
  );
}

function publishedInWords({
  plan,
  rangePercent,
  roundedPercent,
  toleratedPercent,
  exceeded,
  source,
}: PublishedTolerance): string {
  const seen = `By the published table for ${plan} seeds (${source}) the replicates lie ${plainNumber(rangePercent)} points apart at a mean of ${roundedPercent} %`;
  if (toleratedPercent === null) return `${seen}, for which it has no value.`;
  return `${seen}; it tolerates ${toleratedPercent}: ${exceeded ? "a laboratory would test again." : "within the range."}`;
}
