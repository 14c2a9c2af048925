import { Section } from "@/components/frame";
import { dayInWords } from "@/lib/display/dates";
import type { ReadTest } from "@/lib/registry/germination-tests/read-germination-test";
import { addDays, type CivilDay, daysBetween } from "@/lib/science/dates/civil-day";
import { LaterCountsForm } from "./later-counts-form";

/** Where the next count of a running test is written down. */
export function CountAgain({ read, today }: { read: ReadTest; today: CivilDay }) {
  const { test, replicates, totals } = read;
  const exact = test.onFirst === test.onLast;
  const now = exact ? daysBetween(test.onFirst, today) : null;
  const reached = now !== null && now > 0 && now !== totals.lastDay;
  const last = exact && test.finalCountDay !== null ? dayInWords(addDays(test.onFirst, test.finalCountDay)) : null;
  return (
    <Section id="count" title="Count it again" aside={last ? `last count ${last}` : undefined}>
      <LaterCountsForm
        testId={test.id}
        basis={test.basis}
        day={reached ? now : null}
        finalCountDay={test.finalCountDay}
        replicates={replicates.map(({ id, name, sown, counts }) => ({
          id,
          name,
          sown,
          counts: counts.map(({ day, normal, abnormal, hard, fresh, dead }) => ({
            day,
            normal,
            abnormal,
            hard,
            fresh,
            dead,
          })),
        }))}
      />
    </Section>
  );
}
