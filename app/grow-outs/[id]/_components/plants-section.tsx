import { Section } from "@/components/frame";
import { DataTable, readTableAddress, type SearchParameters } from "@/components/tables";
import { counted } from "@/lib/display/plurals";
import type { UnitSettings } from "@/lib/display/units";
import type { GrowOutRead } from "@/lib/registry/grow-outs/read-grow-out";
import { plantColumns, plantRow } from "../../_list/plant-rows";

/** Plants with their tags and scores, a column a trait. */
export function PlantsSection({
  read: { plants, traits, growOut, people },
  units,
  parameters,
}: {
  read: GrowOutRead;
  units: UnitSettings;
  parameters: SearchParameters;
}) {
  if (plants.length === 0) return null;
  const columns = plantColumns(plants, traits);
  const kept = plants.filter((plant) => plant.kept).length;
  return (
    <Section id="plants" title="Plants and scores" aside={`${counted(plants.length, "plant")}, ${kept} kept`}>
      <DataTable
        caption="Plants and scores"
        noun="plant"
        columns={columns}
        rows={plants.map((plant) => plantRow(plant, traits, units, people))}
        path={`/grow-outs/${growOut.id}`}
        address={readTableAddress(parameters, columns)}
        filterLabel="Find a plant"
        csv={`/grow-outs/${growOut.id}/plants-csv`}
      />
    </Section>
  );
}
