import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { PageHead } from "@/components/frame";
import { PlantTags, type PrintedTag, tagLayout } from "@/components/plant-tags";
import { SeedCoat } from "@/components/seed-coat";
import type { SearchParameters } from "@/components/tables";
import { Notice } from "@/components/ui";
import { counted } from "@/lib/display/plurals";
import { refusalSentence } from "@/lib/display/refusals";
import { readPlantsGrid } from "@/lib/registry/plants/read-plants-grid";
import { tagCodeText } from "@/lib/schemas/field/tag-code";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { tagsAskedSchema } from "@/lib/schemas/plants/sheet-asked";
import { storedSeedCoat } from "@/lib/schemas/varieties/seed-coat";
import { current } from "../../../_session/current";
import { scanPathOf } from "../../../_session/scan-code";
import { PrintButton } from "../../../sharing/_parts/print-button";
import { asTyped } from "../sheet/_sheet/as-typed";
import { rowsOfSheet } from "../sheet/_sheet/rows-of-sheet";
import { TagsForm } from "./_tags/tags-form";

export const metadata: Metadata = { title: "Plant tags" };

type Parameters = { params: Promise<{ id: string }>; searchParams: Promise<SearchParameters> };

export default async function TagsPage({ params, searchParams }: Parameters) {
  const { db, settings, today } = await current();
  const { id } = await params;
  const read = await readPlantsGrid(db, id);
  if (!read) notFound();
  const typed = asTyped(await searchParams);
  const asked = parseForm(tagsAskedSchema(settings.hemisphere), typed);
  const rows = asked.ok ? rowsOfSheet(read.plants, { ...asked.value, down: asked.value.down ?? "next" }) : asked;
  const usualPaper = settings.units === "imperial" ? "letter" : "a4";
  const copies = asked.ok && asked.value.twice ? ["plant", "bag"] : ["plant"];
  const tags = (rows.ok ? rows.value : []).flatMap(({ tag }, place) =>
    tag === null ? [] : copies.map((copy): PrintedTag => tagOf(`${place} ${copy}`, tag, id)),
  );
  const { growOut } = read;
  const refusals = [...(asked.ok ? [] : asked.refusals), ...(asked.ok && !rows.ok ? rows.refusals : [])];
  return (
    <div className="sheet stack">
      <div className="not-on-paper stack">
        <PageHead
          title="Plant tags"
          kind={
            <>
              <Link href={`/grow-outs/${id}`}>{growOut.name}</Link>, grow-out of {growOut.variety}
            </>
          }
          mark={
            <SeedCoat name={growOut.variety} crop={growOut.cropKey} coat={storedSeedCoat(growOut.seedCoat)} size={56} />
          }
          actions={tags.length > 0 ? <PrintButton /> : null}
        >
          <p className="measure">
            Tags to cut out. The code says the tag and the grow-out, and the field page reads it without signal; the
            number beside it is for mud and dark. Nothing is written by printing them: a tag is on record when it is on
            a plant.
          </p>
        </PageHead>
        <Notice>
          <p>
            Paper alone lasts a week. Take waterproof sheets and a laser printer, or laminate with a wide rim; ink runs
            in the rain, a pencil on the back does not. Tie loosely, so that two fingers find room beside the stem, and
            cut away from your hand. Count the tags out and home again: plastic that is left lies in the soil for ever,
            and in fodder it harms animals; your local waste rules say where it goes.
          </p>
        </Notice>
        <TagsForm
          growOutId={id}
          typed={typed}
          usualPaper={usualPaper}
          refusals={refusals.map((each) => ({ field: String(each.path[0] ?? ""), sentence: refusalSentence(each) }))}
        />
        {tags.length > 0 ? (
          <p className="quiet">{counted(tags.length, "tag")}, to be cut along the broken lines.</p>
        ) : refusals.length === 0 ? (
          <Notice title="No plant is on record here">
            <p>Print the next free numbers instead.</p>
          </Notice>
        ) : null}
      </div>
      {asked.ok && tags.length > 0 ? (
        <div className="papers">
          <PlantTags
            layout={tagLayout(asked.value.paper ?? usualPaper, asked.value.kind ?? "hang")}
            tags={tags}
            variety={growOut.variety}
            growOut={growOut.name}
            year={(growOut.sownLast ?? today).slice(0, 4)}
          />
        </div>
      ) : null}
    </div>
  );
}

function tagOf(id: string, tag: string, growOutId: string): PrintedTag {
  return { id, tag, code: scanPathOf(tagCodeText(tag, growOutId)) };
}
