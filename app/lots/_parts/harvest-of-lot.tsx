import Link from "next/link";
import { Section } from "@/components/frame";
import { dateInWords } from "@/lib/display/dates";
import { counted } from "@/lib/display/plurals";
import type { UnitSettings } from "@/lib/display/units";
import { readHarvests } from "@/lib/registry/harvests/read-harvests";
import type { LotHead } from "@/lib/registry/lots/read-head";
import { current } from "../../_session/current";
import { HarvestPart } from "../../grow-outs/_harvest/harvest-part";
import { amountOfHarvest } from "../../grow-outs/_harvest/harvest-words";

/** How a lot was harvested, where that is on record: its seed parents and how evenly they gave. Two statements. */
export async function HarvestOfLot({ lot, units }: { lot: LotHead; units: UnitSettings }) {
  if (lot.kind !== "harvest" || lot.growOutId === null) return null;
  const { db, today } = await current();
  const read = await readHarvests(db, lot.growOutId, today);
  const harvest = read?.harvests.find(({ lotId }) => lotId === lot.id);
  if (!read || !harvest) return null;
  const told = [
    harvest.seedParents === null ? "seed parents not counted" : counted(harvest.seedParents, "seed parent"),
    harvest.bulked ?? "",
    amountOfHarvest(harvest, units) ?? "not measured",
    harvest.on === null ? "" : dateInWords(harvest.on),
  ];
  return (
    <Section
      id="harvest"
      title="How it was harvested"
      aside={<Link href={`/grow-outs/${read.growOut.id}#harvested`}>all harvests of {read.growOut.name}</Link>}
    >
      <HarvestPart
        read={read}
        harvest={harvest}
        units={units}
        title={<p className="counts">{told.filter(Boolean).join(", ")}</p>}
      />
    </Section>
  );
}
