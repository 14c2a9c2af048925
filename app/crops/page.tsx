import type { Metadata } from "next";
import { PageHead } from "@/components/frame";
import { Figure } from "@/components/numbers";
import { DataTable, readTableAddress, type SearchParameters } from "@/components/tables";
import { counted } from "@/lib/display/plurals";
import { listCrops } from "@/lib/registry/crops/list-crops";
import { current } from "../_session/current";
import { columns, cropRow } from "./_words/crop-rows";

export const metadata: Metadata = { title: "Crops" };

export default async function Crops({ searchParams }: { searchParams: Promise<SearchParameters> }) {
  const { db } = await current();
  const parameters = await searchParams;
  const crops = await listCrops(db);
  const grown = crops.filter((crop) => crop.varieties > 0).length;
  return (
    <div className="sheet stack">
      <PageHead
        title="Crops"
        kind="Registry"
        figure={
          <Figure value={counted(crops.length, "crop")}>
            {grown === 0
              ? "with their profiles; none of them has a variety here yet."
              : `with their profiles; of ${grown} there are varieties here.`}
          </Figure>
        }
      >
        <p className="measure">
          A profile says what is usual: who pollinates, how many plants, how far from others, how long the seed lives.
          Most of it is guidance, not law; where your place is different, write your own value and why.
        </p>
      </PageHead>
      <DataTable
        caption="Crops"
        noun="crop"
        columns={columns}
        rows={crops.map(cropRow)}
        path="/crops"
        address={readTableAddress(parameters, columns)}
        others={parameters}
        filterLabel="Find a crop"
        csv="/crops/csv"
      />
    </div>
  );
}
