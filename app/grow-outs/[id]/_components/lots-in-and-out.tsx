import Link from "next/link";
import { Section } from "@/components/frame";
import { Measured } from "@/components/numbers";
import { SimpleTable } from "@/components/tables";
import { dateInWords } from "@/lib/display/dates";
import { percent, wholeNumber } from "@/lib/display/numbers";
import { listed } from "@/lib/display/plurals";
import { type UnitSettings, weight } from "@/lib/display/units";
import type { GrowOutRead } from "@/lib/registry/grow-outs/read-grow-out";

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
          kept: variety.crop.clonal ? (
            "kept by division"
          ) : (
            <Link href={`/lots/${lot.id}`}>{percent(lot.figures?.diversityRetained ?? null)}</Link>
          ),
        },
      }))}
    />
  );
}
