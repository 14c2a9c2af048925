import Link from "next/link";
import { Section } from "@/components/frame";
import { DataTable, readTableAddress, type SearchParameters } from "@/components/tables";
import { counted } from "@/lib/display/plurals";
import type { UnitSettings } from "@/lib/display/units";
import type { GrowOutRead } from "@/lib/registry/grow-outs/read-grow-out";
import { marksInShort } from "@/lib/registry/plants/marks-in-short";
import { tagsTwice } from "@/lib/registry/plants/tags-twice";
import { plantColumns, plantRow } from "../../_list/plant-rows";
import { MarksOfPlants } from "./marks-of-plants";
import { ScoresOfPlants } from "./scores-of-plants";
import { TagsTwice } from "./tags-twice";

/** More plants than these are shown when they are asked for. */
const foldedAbove = 40;

/** Plants with their marks and scores: how many are to be kept and where they stand, what was scored by whom, and each plant. */
export function PlantsSection({
  read: { plants, traits, growOut, variety, people },
  units,
  parameters,
}: {
  read: GrowOutRead;
  units: UnitSettings;
  parameters: SearchParameters;
}) {
  if (plants.length === 0) {
    return (
      <Section id="plants" title="Plants and scores" aside={<WaysToPlants growOutId={growOut.id} choose={false} />}>
        <p className="quiet">
          No plant is marked on record. A tag, an intent and a few scores tell later why it was kept.
        </p>
      </Section>
    );
  }
  const columns = plantColumns(plants, traits);
  const address = readTableAddress(parameters, columns);
  const asked = address.filter !== "" || address.sort !== null || address.columns !== null;
  const kept = plants.filter((plant) => plant.kept).length;
  return (
    <Section
      id="plants"
      title="Plants and scores"
      aside={<WaysToPlants growOutId={growOut.id} choose={traits.length > 0} />}
    >
      <div className="stack-near">
        <MarksOfPlants
          marks={marksInShort(plants)}
          kept={kept}
          wanted={growOut.seedParentsPlanned ?? variety.seedParentsWanted}
        />
        <TagsTwice growOutId={growOut.id} twice={tagsTwice(plants)} />
        <ScoresOfPlants plants={plants} traits={traits} people={people} varietyId={variety.id} />
        <details className="whole-on-paper" open={plants.length <= foldedAbove || asked}>
          <summary>Each plant</summary>
          <DataTable
            caption={counted(plants.length, "plant")}
            noun="plant"
            columns={columns}
            rows={plants.map((plant) => plantRow(plant, traits, units, people))}
            path={`/grow-outs/${growOut.id}`}
            address={address}
            filterLabel="Find a plant"
            csv={`/grow-outs/${growOut.id}/plants-csv`}
          />
        </details>
      </div>
    </Section>
  );
}

/** The ways to the plants; to choose among them where something was scored. */
function WaysToPlants({ growOutId, choose }: { growOutId: string; choose: boolean }) {
  return (
    <span className="row">
      {choose ? <Link href={`/grow-outs/${growOutId}/choose`}>Choose what to keep</Link> : null}
      <Link href={`/grow-outs/${growOutId}/plants`}>Mark and score plants</Link>
      <Link className="not-on-paper" href={`/grow-outs/${growOutId}/sheet`}>
        Field sheet
      </Link>
      <Link className="not-on-paper" href={`/grow-outs/${growOutId}/tags`}>
        Plant tags
      </Link>
    </span>
  );
}
