import { Section } from "@/components/frame";
import { dayInWords } from "@/lib/display/dates";
import { counted } from "@/lib/display/plurals";
import type { ReadTest } from "@/lib/registry/germination-tests/read-germination-test";
import { addDays, type CivilDay, daysBetween } from "@/lib/science/dates/civil-day";
import { LaterCountsForm } from "./later-counts-form";
import styles from "./replicate-table.module.css";

/** Where the next count of a test is written down: in sight while it runs, folded away once it was finished with seeds left over. */
export function CountAgain({ read, today }: { read: ReadTest; today: CivilDay }) {
  const { test, replicates, totals } = read;
  const exact = test.onFirst === test.onLast;
  const now = exact ? daysBetween(test.onFirst, today) : null;
  // A test of years ago is not counted today.
  const reached = now !== null && now > 0 && now <= 120 && now !== totals.lastDay;
  const last = exact && test.finalCountDay !== null ? dayInWords(addDays(test.onFirst, test.finalCountDay)) : null;
  const form = (
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
  );
  if (totals.stage === "final") {
    return (
      <details id="count">
        <summary className={styles.later}>{counted(totals.left, "seed")} left over: something came up later?</summary>
        {form}
      </details>
    );
  }
  return (
    <Section id="count" title="Count it again" aside={last ? `last count ${last}` : undefined}>
      {form}
    </Section>
  );
}
