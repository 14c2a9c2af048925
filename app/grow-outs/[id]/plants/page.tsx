import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { PageHead } from "@/components/frame";
import { Figure } from "@/components/numbers";
import { SeedCoat } from "@/components/seed-coat";
import type { SearchParameters } from "@/components/tables";
import { ButtonLink, Notice } from "@/components/ui";
import { Way } from "@/components/ui/offered";
import { counted } from "@/lib/display/plurals";
import { markShown } from "@/lib/registry/grow-outs/plants-of-grow-out";
import { type PlantsGrid as GridRead, mayStand, readPlantsGrid } from "@/lib/registry/plants/read-plants-grid";
import { tagsTwice } from "@/lib/registry/plants/tags-twice";
import { storedSeedCoat } from "@/lib/schemas/varieties/seed-coat";
import { current } from "../../../_session/current";
import { TagsTwice } from "../_components/tags-twice";
import { gridData } from "./_grid/grid-data";
import { PlantsGrid } from "./_grid/plants-grid";
import { sheetAskedFor } from "./_sheet/sheet-asked-for";
import { SheetCameHome } from "./_sheet/sheet-came-home";

export const metadata: Metadata = { title: "Plants, marks and scores" };

type Parameters = { params: Promise<{ id: string }>; searchParams: Promise<SearchParameters> };

export default async function PlantsPage({ params, searchParams }: Parameters) {
  const { db, settings, today } = await current();
  const { id } = await params;
  const read = await readPlantsGrid(db, id);
  if (!read) notFound();
  const { growOut, traits } = read;
  const sheet = sheetAskedFor(await searchParams, read);
  return (
    <div className="sheet stack">
      <PageHead
        title="Plants, marks and scores"
        kind={
          <>
            <Link href={`/grow-outs/${id}`}>{growOut.name}</Link>, grow-out of{" "}
            <Link href={`/varieties/${growOut.varietyId}`}>{growOut.variety}</Link>
          </>
        }
        mark={
          <SeedCoat name={growOut.variety} crop={growOut.cropKey} coat={storedSeedCoat(growOut.seedCoat)} size={56} />
        }
        figure={<MarkedFigure read={read} />}
        actions={
          <>
            <ButtonLink href={`/grow-outs/${id}/plants/add`}>Add plants</ButtonLink>
            <ButtonLink href={`/grow-outs/${id}/sheet`}>Field sheet</ButtonLink>
            <ButtonLink href={`/grow-outs/${id}/tags`}>Tags</ButtonLink>
            <ButtonLink href={`/varieties/${growOut.varietyId}/traits`}>Traits</ButtonLink>
            <ButtonLink href={`/grow-outs/${id}/plants-csv`} kind="quiet" download>
              As CSV
            </ButtonLink>
          </>
        }
      />
      <TagsTwice growOutId={id} twice={tagsTwice(read.plants)} />
      {traits.length === 0 ? (
        <Notice title="No trait is defined yet">
          <p>
            Tags and intents can be written all the same. What is scored is said first: four to six traits, or nobody
            fills them in the rain. <Way href={`/varieties/${growOut.varietyId}/traits/new`}>Define a trait</Way>
          </p>
        </Notice>
      ) : null}
      <SheetCameHome growOutId={id} sheet={sheet} />
      <PlantsGrid
        key={sheet?.ok ? sheet.value.text : ""}
        growOutId={id}
        growOut={growOut.name}
        data={gridData(read, sheet?.ok ? sheet.value : null)}
        hemisphere={settings.hemisphere}
        today={mayStand(growOut, today) ? today : ""}
      />
    </div>
  );
}

/** How many plants are marked keep, of all on record, and against the plan. */
function MarkedFigure({ read: { plants, growOut } }: { read: GridRead }) {
  const kept = plants.filter((plant) => markShown(plant)?.intent === "keep").length;
  const planned = growOut.seedParentsPlanned;
  const against = planned === null ? "" : ` The plan asks for ${counted(planned, "seed parent")}.`;
  return (
    <Figure value={String(kept)} waiting={planned !== null && plants.length > 0 && kept < planned}>
      of {counted(plants.length, "plant")} on record {kept === 1 ? "is" : "are"} marked keep.{against}
    </Figure>
  );
}
