import Link from "next/link";
import { Section } from "@/components/frame";
import { Measured } from "@/components/numbers";
import { SimpleTable } from "@/components/tables";
import { Way } from "@/components/ui/offered";
import { dateInWords } from "@/lib/display/dates";
import { effectiveSize, wholeNumber } from "@/lib/display/numbers";
import type { VarietyRead } from "@/lib/registry/varieties/read-variety";

const columns = [
  { key: "growOut", name: "Grow-out" },
  { key: "sown", name: "Sown" },
  { key: "steward", name: "Steward" },
  { key: "standing", name: "Standing", kind: "count" },
  { key: "parents", name: "Seed parents", kind: "count" },
  { key: "size", name: "Counts as", kind: "count" },
  { key: "gave", name: "Gave" },
] as const;

/** The grow-outs of a variety, failed ones too. */
export function GrowOutsSection({ read }: { read: VarietyRead }) {
  const { growOuts, crop, people, variety } = read;
  const links = (
    <>
      <Way href={`/grow-outs/new?variety=${variety.id}`}>Plan a grow-out</Way>
      {growOuts.length > 0 ? (
        <>
          {", "}
          <Link href={`/grow-outs?variety=${variety.id}`}>in the list</Link>
        </>
      ) : null}
    </>
  );
  return (
    <Section id="grow-outs" title="Grow-outs" aside={links}>
      {growOuts.length === 0 ? (
        <p className="quiet">No grow-out of it is on record.</p>
      ) : (
        <SimpleTable
          entries
          columns={columns}
          rows={growOuts.map((growOut) => ({
            id: growOut.id,
            cells: {
              growOut: <Link href={`/grow-outs/${growOut.id}`}>{growOut.name}</Link>,
              sown: growOut.sown === null ? <Measured value={null} /> : dateInWords(growOut.sown),
              steward: growOut.stewardId === null ? "" : (people.get(growOut.stewardId) ?? "a steward"),
              standing: counted(growOut.plantsStanding),
              parents: counted(growOut.seedParents),
              size:
                crop.clonal || growOut.lots.length === 0 ? (
                  ""
                ) : (
                  <Size size={growOut.effectiveSize} floor={crop.plantsMin} />
                ),
              gave:
                growOut.lots.length > 0
                  ? growOut.lots.map((lot, index) => (
                      <span key={lot.id}>
                        {index > 0 ? ", " : ""}
                        <Link href={`/lots/${lot.id}`}>{lot.number}</Link>
                      </span>
                    ))
                  : (growOut.outcome ?? "no lot on record"),
            },
          }))}
        />
      )}
    </Section>
  );
}

function counted(plants: number | null) {
  return plants === null ? <Measured value={null} /> : wholeNumber(plants);
}

/** The effective size; below the crop's floor of plants it waits. */
function Size({ size, floor }: { size: number | null; floor: number | null }) {
  if (size === null) return <Measured value={null} />;
  return <span className={floor !== null && size < floor ? "waits" : undefined}>{effectiveSize(size)}</span>;
}
