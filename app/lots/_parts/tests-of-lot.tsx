import Link from "next/link";
import { OverYears, type YearPoint } from "@/components/charts";
import { SpanBar } from "@/components/doubt";
import { SimpleTable } from "@/components/tables";
import { dateInWords } from "@/lib/display/dates";
import { kOfN, percent, percentSpan } from "@/lib/display/numbers";
import type { TestOfLot } from "@/lib/registry/germination-tests/tests-of-lot";
import type { LotRead } from "@/lib/registry/lots/read-lot";
import type { Settings } from "@/lib/schemas/settings";

/** The germination tests of a lot with their exact intervals, and what the years did to it. */
export function TestsOfLot({ read, settings }: { read: LotRead; settings: Settings }) {
  const points = read.tests.flatMap(pointOf);
  const line = { at: settings.renewalPlan, name: `renew below ${percent(settings.renewalPlan, 0)}` };
  return (
    <div className="stack">
      <SimpleTable
        columns={[
          { key: "test", name: "Test" },
          { key: "on", name: "Set up" },
          { key: "result", name: "Came up", kind: "count" },
          { key: "span", name: "95 % interval" },
        ]}
        rows={read.tests.map((test) => ({
          id: test.id,
          cells: {
            test: <Link href={`/tests/${test.id}`}>{test.name}</Link>,
            on: dateInWords(test.on),
            result: test.germination ? kOfN(test.totals.sums.normal ?? 0, test.totals.sown) : "not counted yet",
            span: test.germination ? (
              <>
                <SpanBar
                  value={test.germination.share}
                  low={test.germination.low}
                  high={test.germination.high}
                  grade="counted"
                  line={settings.renewalPlan}
                  label={wordsOf(test)}
                />
                <span className="counts">
                  {percentSpan(test.germination.low, test.germination.high)}
                  {test.basis === "sprouted" ? ", sprouted" : ""}
                  {test.totals.stage === "final" ? "" : ", so far"}
                </span>
              </>
            ) : null,
          },
        }))}
      />
      {points.length > 1 ? (
        <OverYears title="Germination by year" series={[{ name: read.lot.number, points }]} lines={[line]} />
      ) : null}
    </div>
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
