import type { Metadata } from "next";
import { headers } from "next/headers";
import Link from "next/link";
import { notFound } from "next/navigation";
import { Cautions } from "@/components/cautions";
import { FieldSheet, sheetLayout, traitHead } from "@/components/field-sheet";
import { PageHead } from "@/components/frame";
import { SeedCoat } from "@/components/seed-coat";
import type { SearchParameters } from "@/components/tables";
import { Notice } from "@/components/ui";
import { Way } from "@/components/ui/offered";
import { dateInWords } from "@/lib/display/dates";
import { counted } from "@/lib/display/plurals";
import { refusalSentence } from "@/lib/display/refusals";
import { readPlantsGrid } from "@/lib/registry/plants/read-plants-grid";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { sheetAddress } from "@/lib/schemas/plants/sheet-address";
import { sheetAskedSchema } from "@/lib/schemas/plants/sheet-asked";
import { sheetRowsText } from "@/lib/schemas/plants/sheet-rows";
import { storedSeedCoat } from "@/lib/schemas/varieties/seed-coat";
import { current } from "../../../_session/current";
import { originHere } from "../../../_session/origin-here";
import { scanPathOf } from "../../../_session/scan-code";
import { PrintButton } from "../../../sharing/_parts/print-button";
import { asTyped } from "./_sheet/as-typed";
import { goneFromField, rowsOfSheet } from "./_sheet/rows-of-sheet";
import { SheetForm } from "./_sheet/sheet-form";
import { tickedTraits } from "./_sheet/ticked-traits";

export const metadata: Metadata = { title: "Field sheet" };

type Parameters = { params: Promise<{ id: string }>; searchParams: Promise<SearchParameters> };

export default async function SheetPage({ params, searchParams }: Parameters) {
  const { db, settings } = await current();
  const { id } = await params;
  const read = await readPlantsGrid(db, id);
  if (!read) notFound();
  const parameters = await searchParams;
  const asked = parseForm(sheetAskedSchema(settings.hemisphere), asTyped(parameters));
  const traits = tickedTraits(read, parameters);
  const rows = asked.ok ? rowsOfSheet(read.plants, asked.value) : asked;
  const usualPaper = settings.units === "imperial" ? "letter" : "a4";
  const layout =
    asked.ok && rows.ok && rows.value.length > 0
      ? sheetLayout({
          paper: asked.value.paper ?? usualPaper,
          lie: asked.value.lie === "fits" ? null : asked.value.lie,
          rows: rows.value.length,
          traits: traits.length,
          cells: rows.value.some((row) => row.cell !== null),
        })
      : null;
  const { growOut } = read;
  const origin = originHere(await headers());
  const on = asked.ok && asked.value.on?.precision === "day" ? asked.value.on.text : null;
  const gone = goneFromField(read.plants);
  return (
    <div className="sheet stack">
      <div className="not-on-paper stack">
        <PageHead
          title="Field sheet"
          kind={
            <>
              <Link href={`/grow-outs/${id}`}>{growOut.name}</Link>, grow-out of {growOut.variety}
            </>
          }
          mark={
            <SeedCoat name={growOut.variety} crop={growOut.cropKey} coat={storedSeedCoat(growOut.seedCoat)} size={56} />
          }
          actions={layout ? <PrintButton /> : null}
        >
          <p className="measure">
            Paper for the field, in case the phone dies. The code in its head leads back here, to type it in row by row
            as it lies; <Way href={`/grow-outs/${id}/tags`}>tags to cut out</Way> go with it. Earlier scores are not
            printed: who sees the old one gives it again.
          </p>
        </PageHead>
        <Cautions step="rogue" crop={growOut.cropKey} />
        <SheetForm
          growOutId={id}
          typed={asTyped(parameters)}
          start={{ down: read.plants.length - gone > 0 ? "record" : "next", paper: usualPaper }}
          traits={read.traits.map((line) => ({ id: line.id, name: line.newest.name }))}
          ticked={traits.map((line) => line.id)}
          refusals={[...(asked.ok ? [] : asked.refusals), ...(asked.ok && !rows.ok ? rows.refusals : [])].map(
            (each) => ({
              field: String(each.path[0] ?? ""),
              sentence: refusalSentence(each),
            }),
          )}
        />
        {gone > 0 ? (
          <p className="quiet">
            {counted(gone, "plant")} of which it is written what became of {gone === 1 ? "it" : "them"} (lost, eaten,
            rogued later) {gone === 1 ? "is" : "are"} left out.
          </p>
        ) : null}
        {rows.ok && rows.value.length === 0 ? (
          <Notice title="No plant is on record here">
            <p>Choose numbered rows, or rows whose tags are written by hand.</p>
          </Notice>
        ) : null}
        {rows.ok && rows.value.length > 0 && !layout ? (
          <Notice kind="waiting" title="Too many traits for this paper">
            <p>
              {counted(traits.length, "trait")} find no room as it lies. Tick fewer, or lay the paper on its long side.
            </p>
          </Notice>
        ) : null}
      </div>
      {layout && rows.ok ? (
        <div className="papers">
          <FieldSheet
            head={{
              ...{ growOut: growOut.name, variety: growOut.variety, crop: growOut.crop, cropKey: growOut.cropKey },
              seedCoat: storedSeedCoat(growOut.seedCoat),
              on: asked.ok && asked.value.on ? dateInWords(asked.value.on) : null,
            }}
            layout={layout}
            traits={traits.map((line) => ({ id: line.id, ...traitHead(line.newest) }))}
            lines={rows.value.map((row, place) => ({ id: String(place), ...row }))}
            codes={layout.pages.map(({ from, to }) => {
              const own = rows.value.slice(from, to + 1);
              const address = sheetAddress(
                origin,
                id,
                own,
                traits.map((line) => line.id),
                on,
              );
              return { ...scanPathOf(address), rows: sheetRowsText(own) };
            })}
          />
        </div>
      ) : null}
    </div>
  );
}
