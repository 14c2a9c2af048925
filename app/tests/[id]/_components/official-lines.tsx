import Link from "next/link";
import { Section } from "@/components/frame";
import { kOfN, percent } from "@/lib/display/numbers";
import { ownValuesInWords } from "@/lib/display/own-values";
import type { ReadTest } from "@/lib/registry/germination-tests/read-germination-test";
import { daysInWords, mediaInWords, warmthInWords } from "../../_words/conditions-in-words";

/** What an official test of the crop looks like, and the line for seed in trade: orientation beside a home test, nothing more. */
export function OfficialLines({ read }: { read: ReadTest }) {
  const { conditions, minimum, totals } = read;
  if (!conditions && !minimum) return null;
  const hard = totals.sums.hard;
  const together = (totals.sums.normal ?? 0) + (hard ?? 0);
  return (
    <Section id="official" title="For orientation">
      {conditions ? (
        <p>
          By {conditions.source}, {daysInWords(conditions)}, {mediaInWords(conditions)}, at {warmthInWords(conditions)},
          with 400 seeds. {ownValuesInWords(conditions.own).join(" ")}{" "}
          <Link href="/methods/tables/germination-conditions">The table</Link>
        </p>
      ) : null}
      {minimum && totals.counted ? (
        <p>
          For vegetable seed of {minimum.kind} in trade in the United States the line is {percent(minimum.minimum)},
          normal seedlings and hard seed together ({minimum.source}). Here they are {kOfN(together, totals.sown)}
          {hard === null ? ", hard seed not told apart" : ""}. A home test is no proof of it, one way or the other.{" "}
          {ownValuesInWords(minimum.own).join(" ")} <Link href="/methods/tables/vegetable-minima">The table</Link>
        </p>
      ) : null}
    </Section>
  );
}
