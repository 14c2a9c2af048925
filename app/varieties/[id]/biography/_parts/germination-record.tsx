import { Section } from "@/components/frame";
import { Measured } from "@/components/numbers";
import { SimpleTable } from "@/components/tables";
import { dateInWords } from "@/lib/display/dates";
import { kOfN, percentSpan } from "@/lib/display/numbers";
import type { TestOfVariety } from "@/lib/registry/varieties/tests-of-variety";

const columns = [
  { key: "lot", name: "Lot" },
  { key: "tests", name: "Tests", kind: "count" },
  { key: "first", name: "First test" },
  { key: "last", name: "Last test" },
] as const;

/** How the seed of each lot came up when it was first tested and when last; the 95 % interval is exact. */
export function GerminationRecord({ tests }: { tests: readonly TestOfVariety[] }) {
  const byLot = new Map<string, TestOfVariety[]>();
  for (const test of tests) byLot.set(test.lotId, [...(byLot.get(test.lotId) ?? []), test]);
  return (
    <Section id="germination" title="How its seed came up">
      {tests.length === 0 ? (
        <p className="quiet">No test of it is on record.</p>
      ) : (
        <div className="stack-near">
          <SimpleTable
            columns={columns}
            entries
            rows={[...byLot].map(([id, of]) => ({
              id,
              cells: {
                lot: of[0]?.lot,
                tests: of.length,
                first: <Told test={of[0]} />,
                last: of.length > 1 ? <Told test={of.at(-1)} /> : "",
              },
            }))}
          />
          <p className="quiet measure">
            Behind each count the span in which the share of all its seed lies, 19 times of 20.
          </p>
        </div>
      )}
    </Section>
  );
}

function Told({ test }: { test: TestOfVariety | undefined }) {
  if (!test) return null;
  return (
    <>
      {dateInWords(test.on)}: <Measured value={kOfN(test.normal, test.sown)} span={percentSpan(test.low, test.high)} />
    </>
  );
}
