import Link from "next/link";
import { Section } from "@/components/frame";
import { ExplainedHere, Measured } from "@/components/numbers";
import { SimpleTable } from "@/components/tables";
import { dateInWords } from "@/lib/display/dates";
import { keptSpan } from "@/lib/display/kept-span";
import { percent, wholeNumber } from "@/lib/display/numbers";
import { listed } from "@/lib/display/plurals";
import { type UnitSettings, weight } from "@/lib/display/units";
import type { GrowOutRead } from "@/lib/registry/grow-outs/read-grow-out";
import { spanExplanation } from "../../../lots/_words/span-in-words";
import { diversityExplanation } from "../../../varieties/_words/explanations";

const sownColumns = [
  { key: "lot", name: "Lot" },
  { key: "year", name: "Harvested" },
  { key: "share", name: "Share", kind: "count" },
  { key: "taken", name: "From the jar", kind: "count" },
] as const;

/** The lots that were sown, each with its share of the plants. */
export function LotsSown({ read: { growOut, parents, variety }, units }: { read: GrowOutRead; units: UnitSettings }) {
  const sown = growOut.sown !== null;
  return (
    <Section id="sown" title={sown ? "What was sown" : "What is to be sown"}>
      {parents.length === 0 ? (
        <p className="quiet">{sown ? "Which lot was sown is not on record." : "Which lot to sow is not said yet."}</p>
      ) : (
        <SimpleTable
          columns={sownColumns}
          entries
          rows={parents.map((lot) => ({
            id: lot.id,
            cells: {
              lot: (
                <>
                  <Link href={`/lots/${lot.id}`}>{lot.number}</Link>
                  {lot.role === null ? "" : `, ${lot.role}s`}
                </>
              ),
              year: lot.year === null ? <Measured value={null} /> : dateInWords(lot.year),
              share: lot.share === null ? <Measured value={null} /> : percent(lot.share),
              taken: takenInWords(lot, sown, units),
            },
          }))}
        />
      )}
      {parents
        .filter((lot) => lot.varietyId !== variety.id)
        .map((lot) => (
          <p key={lot.id}>
            Lot {lot.number} is <Link href={`/varieties/${lot.varietyId}`}>{lot.variety}</Link>: this is a cross.
          </p>
        ))}
    </Section>
  );
}

/** What its ledger says left the jar for this grow-out; of an old sowing that nobody booked it says nothing. */
function takenInWords({ id, taken }: GrowOutRead["parents"][number], sown: boolean, units: UnitSettings) {
  if (taken.length === 0) return sown ? <Measured value={null} /> : "not yet";
  return (
    <Link href={`/lots/${id}#ledger`}>
      {listed(
        taken.map((entry) =>
          entry.unit === "g" ? weight(entry.amount, units) : `${wholeNumber(entry.amount)} ${entry.unit}`,
        ),
      )}
    </Link>
  );
}

const takenColumns = [
  { key: "lot", name: "Lot" },
  { key: "year", name: "Harvested" },
  { key: "grams", name: "On hand", kind: "count" },
  { key: "kept", name: "Diversity kept", kind: "count" },
] as const;

/** The lots that were harvested, where nothing is on record of the harvests themselves; they are one pool and share its figures. */
export function LotsTaken({ read: { harvested, variety }, units }: { read: GrowOutRead; units: UnitSettings }) {
  return (
    <SimpleTable
      columns={takenColumns}
      entries
      rows={harvested.map((lot) => ({
        id: lot.id,
        cells: {
          lot: <Link href={`/lots/${lot.id}`}>{lot.number}</Link>,
          year: lot.year === null ? <Measured value={null} /> : dateInWords(lot.year),
          grams: lot.figures?.gramsOnHand == null ? <Measured value={null} /> : weight(lot.figures.gramsOnHand, units),
          kept: <KeptOfLot lot={lot} crop={variety.crop} />,
        },
      }))}
    />
  );
}

/** Of a selfing crop it hangs on its founders whether a share says anything: the lot's own page tells. */
async function KeptOfLot({
  lot,
  crop,
}: {
  lot: GrowOutRead["harvested"][number];
  crop: GrowOutRead["variety"]["crop"];
}) {
  const { figures, number, id } = lot;
  if (crop.clonal) return "kept by division";
  if (crop.matingSystem === "selfing") return <Link href={`/lots/${id}`}>on its page</Link>;
  if (figures?.span) {
    await figures.span.narrowsAtHand();
    const explanation = spanExplanation(number, figures.founders, figures.span);
    return <ExplainedHere explanation={explanation}>{keptSpan(figures.span.diversityRetained)}</ExplainedHere>;
  }
  if (figures?.diversityRetained == null) return <Measured value={null} />;
  return (
    <ExplainedHere explanation={diversityExplanation({ id, number, figures })}>
      {percent(figures.diversityRetained)}
    </ExplainedHere>
  );
}
