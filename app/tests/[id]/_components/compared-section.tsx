import Link from "next/link";
import { Section } from "@/components/frame";
import { Explained } from "@/components/numbers";
import { dateInWords } from "@/lib/display/dates";
import type { ReadTest } from "@/lib/registry/germination-tests/read-germination-test";
import { comparedInWords, normalWord } from "../../_words/reading-in-words";
import { comparedExplanation } from "./explanations";

/** Whether the lot has really changed since its last test. */
export function ComparedSection({ read }: { read: ReadTest }) {
  const { compared, test, lot } = read;
  if (compared.how === "not-done") return null;
  return (
    <Section id="compared" title="Has it changed?">
      {compared.how === "first" ? (
        <p>This is the first finished test of lot {lot.number}: there is nothing to hold it against yet.</p>
      ) : compared.how === "other-basis" ? (
        <p>
          The test before it, <Link href={`/tests/${compared.earlier.id}`}>{compared.earlier.name}</Link> (
          {dateInWords(compared.earlier.on)}), counted {normalWord(compared.earlier.basis)}, this one{" "}
          {normalWord(test.basis)}. The two are not the same thing, so they are not compared.
        </p>
      ) : (
        <Explained explanation={comparedExplanation(read, compared)}>
          {comparedInWords({
            ...compared.comparison,
            earlier: {
              on: compared.earlier.on,
              sown: compared.earlier.totals.sown,
              normal: compared.earlier.totals.sums.normal ?? 0,
            },
          })}
        </Explained>
      )}
    </Section>
  );
}
