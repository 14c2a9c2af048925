import { ExplainedHere } from "@/components/numbers";
import { SimpleTable } from "@/components/tables";
import { percent, percentSpan, wholeNumber } from "@/lib/display/numbers";
import type { PassOfYears } from "@/lib/registry/traits/read-trait-years";
import { exactInterval } from "@/lib/science/binomial/exact-interval";
import { offTypeExplanation, offTypeReading } from "../../../../grow-outs/_words/off-type-words";
import { Trend, yearsOf } from "../../../../grow-outs/[id]/_counts/rogues";

/** The off-type share of each year with its exact interval, and whether it moves. A year in which nobody wrote how many plants were looked at has none. */
export function OffTypeYears({ passes, variety }: { passes: readonly PassOfYears[]; variety: string }) {
  const years = yearsOf(passes);
  if (years.length === 0)
    return (
      <p className="quiet measure">
        In no year somebody wrote how many plants were looked at, so there is no off-type share. Not looked is not none
        found.
      </p>
    );
  return (
    <div className="stack-near">
      <SimpleTable
        columns={[
          { key: "year", name: "Year" },
          { key: "looked", name: "Looked at", kind: "count" },
          { key: "found", name: "Off-types", kind: "count" },
          { key: "share", name: "Share", kind: "count" },
          { key: "span", name: "In truth", kind: "count" },
        ]}
        rows={years.map(({ year, looked, found }) => {
          const { low, high } = exactInterval(found, looked, 0.95);
          return {
            id: String(year),
            cells: {
              year: String(year),
              looked: wholeNumber(looked),
              found: found === 0 ? "none found" : wholeNumber(found),
              share: <ShareOfYear year={year} looked={looked} found={found} />,
              span: percentSpan(low, high),
            },
          };
        })}
      />
      {years.length < 2 ? (
        <p className="quiet">One year tells of no trend.</p>
      ) : (
        <Trend passes={passes} variety={variety} brief />
      )}
    </div>
  );
}

function ShareOfYear({ year, looked, found }: { year: number; looked: number; found: number }) {
  const reading = offTypeReading({ looked, found, foundAtMost: found });
  const share = percent(found / looked);
  if (!reading) return share;
  return <ExplainedHere explanation={offTypeExplanation(reading, String(year))}>{share}</ExplainedHere>;
}
