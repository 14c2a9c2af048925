import Link from "next/link";
import { OverYears, type YearPoint } from "@/components/charts";
import { SpanBar } from "@/components/doubt";
import { dateInWords } from "@/lib/display/dates";
import { kOfN, percent, percentSpan } from "@/lib/display/numbers";
import type { TestOfLot } from "@/lib/registry/germination-tests/tests-of-lot";
import type { LotRead } from "@/lib/registry/lots/read-lot";
import type { Settings } from "@/lib/schemas/settings";
import styles from "./tests-of-lot.module.css";

/** The germination tests of a lot with their exact intervals, and what the years did to it. */
export function TestsOfLot({ read, settings }: { read: LotRead; settings: Settings }) {
  const points = read.tests.flatMap(pointOf);
  const line = { at: settings.renewalPlan, name: `renew below ${percent(settings.renewalPlan, 0)}` };
  return (
    <div className="stack">
      <ul className={styles.tests}>
        {read.tests.map((test) => (
          <li key={test.id} className={styles.test}>
            <span>
              <Link href={`/tests/${test.id}`}>{test.name}</Link>, {dateInWords(test.on)}
              {test.basis === "sprouted" ? ", by sprouts" : ""}
            </span>
            <Result test={test} line={settings.renewalPlan} />
          </li>
        ))}
      </ul>
      {points.length > 1 ? (
        <OverYears title="Germination by year" series={[{ name: read.lot.number, points }]} lines={[line]} />
      ) : null}
    </div>
  );
}

function Result({ test, line }: { test: TestOfLot; line: number }) {
  if (!test.germination) return <span className="waits">not counted yet</span>;
  const { share, low, high } = test.germination;
  return (
    <>
      <span className={styles.counts}>{kOfN(test.totals.sums.normal ?? 0, test.totals.sown)}</span>
      <span className={styles.span}>
        <SpanBar value={share} low={low} high={high} grade="counted" line={line} label={wordsOf(test)} />
        <span className={styles.counts}>
          {percentSpan(low, high)}
          {test.totals.stage === "final" ? "" : ", so far"}
        </span>
      </span>
    </>
  );
}

function wordsOf(test: TestOfLot): string {
  if (!test.germination) return "not counted yet";
  const counts = kOfN(test.totals.sums.normal ?? 0, test.totals.sown);
  return `${counts}, ${percentSpan(test.germination.low, test.germination.high)}`;
}

function pointOf(test: TestOfLot): YearPoint[] {
  if (!test.germination) return [];
  const { share, low, high } = test.germination;
  const year = (yearOf(test.onFirst) + yearOf(test.onLast)) / 2;
  const words = `${test.name}, ${dateInWords(test.on)}: ${wordsOf(test)}`;
  return [{ year, value: share, low, high, grade: "counted", words }];
}

/** A day as a year and its part, near enough for a drawing. */
function yearOf(day: string): number {
  const [year = 0, month = 1, date = 1] = day.split("-").map(Number);
  return year + (month - 1) / 12 + (date - 1) / 365;
}
