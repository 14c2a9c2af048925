import Link from "next/link";
import type { ReactNode } from "react";
import { Cautions } from "@/components/cautions";
import { Section } from "@/components/frame";
import { ExplainedHere, Measured } from "@/components/numbers";
import { SimpleTable } from "@/components/tables";
import { ButtonLink } from "@/components/ui";
import { Way } from "@/components/ui/offered";
import { dateInWords } from "@/lib/display/dates";
import { effectiveSize, wholeNumber } from "@/lib/display/numbers";
import { type UnitSettings, weight } from "@/lib/display/units";
import type { HarvestedLot } from "@/lib/registry/grow-outs/read-grow-out";
import { MOULDY_SHARE } from "@/lib/registry/harvests/harvest-warnings";
import { type HarvestRead, type HarvestsRead, readHarvests } from "@/lib/registry/harvests/read-harvests";
import { current } from "../../../_session/current";
import { sizeOfHarvestExplanation } from "../../_harvest/evenness-words";
import { HarvestPart } from "../../_harvest/harvest-part";
import { amountOfHarvest, poolWords } from "../../_harvest/harvest-words";
import { LotsTaken } from "../_components/lots-in-and-out";
import type { SectionOfGrowOut } from "./section-of-grow-out";

const columns = [
  { key: "lot", name: "Lot" },
  { key: "parents", name: "Seed parents", kind: "count" },
  { key: "hand", name: "On hand", kind: "count" },
  { key: "size", name: "Counts as", kind: "count" },
] as const;

/** What was harvested, the lots that it became, and how evenly the plants gave. */
export async function HarvestsOfGrowOut({ read, units, today }: SectionOfGrowOut) {
  const { db } = await current();
  const harvests = await readHarvests(db, read.growOut.id, today, read.figures);
  if (!harvests) return null;
  const { harvested, variety } = read;
  const further = `/grow-outs/${read.growOut.id}/harvest`;
  const none = harvested.length === 0 && harvests.harvests.length === 0;
  const pool = poolWords(harvests);
  return (
    <Section
      id="harvested"
      title="What was harvested"
      aside={none ? undefined : <Way href={further}>a further harvest</Way>}
    >
      {none ? (
        <div className="stack-near">
          <p className="quiet">No lot came of it on record.</p>
          <ButtonLink href={further}>Enter a harvest</ButtonLink>
        </div>
      ) : harvests.harvests.length === 0 ? (
        <LotsTaken read={read} units={units} />
      ) : (
        <div className="stack">
          <SimpleTable columns={columns} entries rows={rowsOf(harvests, harvested, units, variety.crop.clonal)} />
          {pool ? <p className="measure">{pool}</p> : null}
          {harvests.harvests.some(({ mouldyShare }) => (mouldyShare ?? 0) > MOULDY_SHARE) ? (
            <Cautions step="harvest" crop={harvests.crop.key} cropName={harvests.crop.commonName} />
          ) : null}
          {harvests.harvests.map((harvest) => (
            <HarvestPart
              key={harvest.id}
              read={harvests}
              harvest={harvest}
              units={units}
              title={<h3>{titleOf(harvest)}</h3>}
            />
          ))}
        </div>
      )}
    </Section>
  );
}

function titleOf({ lotNumber, on }: HarvestRead): string {
  const when = on === null ? "" : `, ${dateInWords(on)}`;
  return lotNumber === null ? `A harvest${when}` : `Lot ${lotNumber}${when}`;
}

/** A row a harvest, and one for each lot of which only that is on record. */
function rowsOf(read: HarvestsRead, lots: readonly HarvestedLot[], units: UnitSettings, clonal: boolean) {
  const lotOf = new Map(lots.map((lot) => [lot.id, lot]));
  const entered = new Set(read.harvests.map(({ lotId }) => lotId));
  const onHand = (lot: HarvestedLot | undefined) =>
    lot?.figures?.gramsOnHand == null ? <Measured value={null} /> : weight(lot.figures.gramsOnHand, units);
  return [
    ...read.harvests.map((harvest) => {
      const { id, lotId, lotNumber, on, seedParents, bulked } = harvest;
      const lot = lotOf.get(lotId ?? "");
      return {
        id,
        cells: {
          lot: (
            <LotCell
              told={[
                on === null ? "" : dateInWords(on),
                bulked ?? "",
                amountOfHarvest(harvest, units) ?? "not measured",
              ]}
            >
              {lotId === null ? "not on record" : <Link href={`/lots/${lotId}`}>{lotNumber}</Link>}
            </LotCell>
          ),
          parents: seedParents === null ? <Measured value={null} /> : wholeNumber(seedParents),
          hand: lotId === null ? "" : onHand(lot),
          size: <SizeCell read={read} harvest={harvest} clonal={clonal} />,
        },
      };
    }),
    ...lots
      .filter(({ id }) => !entered.has(id))
      .map((lot) => ({
        id: lot.id,
        cells: {
          lot: (
            <LotCell told={[lot.year === null ? "" : dateInWords(lot.year)]}>
              <Link href={`/lots/${lot.id}`}>{lot.number}</Link>
            </LotCell>
          ),
          parents: "",
          hand: onHand(lot),
          size: clonal ? "kept by division" : "",
        },
      })),
  ];
}

/** A lot with what is told of its harvest below. */
function LotCell({ told, children }: { told: readonly string[]; children: ReactNode }) {
  const words = told.filter(Boolean).join(", ");
  return (
    <>
      {children}
      {words === "" ? null : <p className="counts quiet">{words}</p>}
    </>
  );
}

/** The effective size of one harvest by itself. */
function SizeCell({ read, harvest, clonal }: { read: HarvestsRead; harvest: HarvestRead; clonal: boolean }) {
  if (clonal) return "kept by division";
  const { size, lotNumber, bulked } = harvest;
  if (!size) return <Measured value={null} />;
  const name = lotNumber === null ? "the harvest" : `lot ${lotNumber} by itself`;
  const shares = harvest.evenness && bulked !== "equal weight" && bulked !== "equal seeds" ? "as each gave" : "equal";
  return (
    <ExplainedHere explanation={sizeOfHarvestExplanation(name, size, shares, read.plot.inbreeding)}>
      {effectiveSize(size.effectiveSize)}
    </ExplainedHere>
  );
}
