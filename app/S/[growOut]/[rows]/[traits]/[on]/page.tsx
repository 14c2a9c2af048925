import type { Metadata } from "next";
import { notFound, redirect } from "next/navigation";
import { PageHead } from "@/components/frame";
import { Way } from "@/components/ui/offered";
import { growOutsByShortCode } from "@/lib/registry/grow-outs/grow-outs-by-short-code";
import { gridOfSheet, sheetPage } from "@/lib/schemas/plants/sheet-address";
import { current } from "../../../../../_session/current";

export const metadata: Metadata = { title: "A field sheet" };

type Steps = { growOut: string; rows: string; traits: string; on: string };

/** Where the code in the head of a field sheet leads: on to the grid of its plants. In capitals, so that the code has fewer modules. */
export default async function ScannedSheetPage({ params }: { params: Promise<Steps> }) {
  const { db } = await current();
  const { growOut, rows, traits, on } = await params;
  const page = sheetPage(growOut, decodeURIComponent(rows), traits, on);
  if (!page.ok) notFound();
  const found = await growOutsByShortCode(db, page.value.growOut);
  const [only] = found;
  if (!only) notFound();
  if (found.length === 1) redirect(gridOfSheet(only.id, page.value));
  return (
    <div className="sheet stack">
      <PageHead title="A field sheet">
        <p className="measure">Two grow-outs have the same short code. Which one is named in the head of the sheet?</p>
      </PageHead>
      <ul>
        {found.map(({ id, name }) => (
          <li key={id}>
            <Way href={gridOfSheet(id, page.value)}>{name}</Way>
          </li>
        ))}
      </ul>
    </div>
  );
}
