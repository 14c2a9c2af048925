import { Section } from "@/components/frame";
import { Measured } from "@/components/numbers";
import { SimpleTable } from "@/components/tables";
import { dateInWords } from "@/lib/display/dates";
import { effectiveSize, wholeNumber } from "@/lib/display/numbers";
import type { VarietyRead } from "@/lib/registry/varieties/read-variety";

const columns = [
  { key: "sown", name: "Sown" },
  { key: "who", name: "By" },
  { key: "plants", name: "Plants", kind: "count" },
  { key: "parents", name: "Seed of", kind: "count" },
  { key: "size", name: "Counts as", kind: "count" },
  { key: "gave", name: "Gave" },
] as const;

/** Every grow-out in its order, those that failed too. */
export function YearsGrown({
  read: { growOuts, crop },
  who,
}: {
  read: Pick<VarietyRead, "growOuts" | "crop">;
  who: (stewardId: string | null) => string;
}) {
  const plants = (count: number | null) => (count === null ? <Measured value={null} /> : wholeNumber(count));
  return (
    <Section id="grown" title="How it was grown">
      {growOuts.length === 0 ? (
        <p className="quiet">No grow-out of it is on record.</p>
      ) : (
        <div className="stack-near">
          <SimpleTable
            columns={columns}
            entries
            rows={growOuts.map((growOut) => ({
              id: growOut.id,
              cells: {
                sown: growOut.sown === null ? <Measured value={null} /> : dateInWords(growOut.sown),
                who: who(growOut.stewardId),
                plants: plants(growOut.plantsStanding),
                parents: plants(growOut.seedParents),
                size:
                  crop.clonal || growOut.lots.length === 0 ? (
                    ""
                  ) : growOut.effectiveSize === null ? (
                    <Measured value={null} />
                  ) : (
                    effectiveSize(growOut.effectiveSize)
                  ),
                gave:
                  growOut.lots.length > 0
                    ? growOut.lots.map((lot) => lot.number).join(", ")
                    : (growOut.outcome ?? "no lot on record"),
              },
            }))}
          />
          {crop.clonal ? null : (
            <p className="quiet measure">
              “Counts as” is the effective size: so many plants, each giving alike, would lose as much by chance. What
              was not counted is unknown.
            </p>
          )}
        </div>
      )}
    </Section>
  );
}
