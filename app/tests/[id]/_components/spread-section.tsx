import { Section } from "@/components/frame";
import { Explained } from "@/components/numbers";
import type { ReadTest } from "@/lib/registry/germination-tests/read-germination-test";
import type { ReplicateSpread } from "@/lib/science/germination/replicate-spread";
import { spreadInWords } from "../../_words/reading-in-words";
import { spreadExplanation } from "./explanations";

/** Whether the replicates are alike, by the exact test. */
export function SpreadSection({ read, spread }: { read: ReadTest; spread: ReplicateSpread }) {
  return (
    <Section id="spread" title="Are the replicates alike?">
      <Explained explanation={spreadExplanation(spread, "the likeness of the replicates")}>
        <span className={spread.consistent ? undefined : "waits"}>{spreadInWords(spread, read.replicates.length)}</span>
      </Explained>
    </Section>
  );
}
