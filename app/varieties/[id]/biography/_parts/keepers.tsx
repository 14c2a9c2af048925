import { Section } from "@/components/frame";
import { Measured } from "@/components/numbers";
import { SimpleTable } from "@/components/tables";
import type { KeeperThroughYears } from "@/lib/registry/varieties/keepers-through-years";

const columns = [
  { key: "who", name: "Keeper" },
  { key: "years", name: "Years that are on record" },
  { key: "growOuts", name: "Grow-outs", kind: "count" },
  { key: "lots", name: "Lots", kind: "count" },
  { key: "now", name: "Seed now" },
] as const;

/** Who kept it, the earliest first, without a map: a village where it may be told. */
export function Keepers({
  keepers,
  who,
  villages,
}: {
  keepers: readonly KeeperThroughYears[];
  who: (stewardId: string) => string;
  villages: ReadonlyMap<string, string>;
}) {
  return (
    <Section id="keepers" title="Who kept it, and when">
      {keepers.length === 0 ? (
        <p className="quiet">No keeper of it is on record.</p>
      ) : (
        <div className="stack-near">
          <SimpleTable
            columns={columns}
            entries
            rows={keepers.map(({ stewardId, from, to, growOuts, lots, hasSeed }) => {
              const village = villages.get(stewardId);
              return {
                id: stewardId,
                cells: {
                  who: village ? `${who(stewardId)}, ${village}` : who(stewardId),
                  years: from === null ? <Measured value={null} /> : from === to ? from : `${from} to ${to}`,
                  growOuts,
                  lots,
                  now: hasSeed ? "yes" : "none on record",
                },
              };
            })}
          />
          <p className="quiet measure">
            The years are those in which their seed was sown or harvested; they may have had it before and after.
          </p>
        </div>
      )}
    </Section>
  );
}
