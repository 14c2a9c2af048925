import type { Metadata } from "next";
import Link from "next/link";
import { EmptyState } from "@/components/empty";
import { PageHead } from "@/components/frame";
import { Figure } from "@/components/numbers";
import { DataTable, readTableAddress, type SearchParameters } from "@/components/tables";
import { ButtonLink } from "@/components/ui";
import { counted } from "@/lib/display/plurals";
import { type GrowOutRow, listGrowOuts } from "@/lib/registry/grow-outs/list-grow-outs";
import { current } from "../_session/current";
import { columns, growOutRow } from "./_list/grow-out-rows";

export const metadata: Metadata = { title: "Grow-outs" };

export default async function GrowOuts({ searchParams }: { searchParams: Promise<SearchParameters> }) {
  const { db } = await current();
  const parameters = await searchParams;
  const varietyId = typeof parameters.variety === "string" ? parameters.variety : undefined;
  const growOuts = await listGrowOuts(db, varietyId);
  const of = varietyId === undefined ? null : (growOuts[0]?.variety ?? "this variety");
  if (growOuts.length === 0) {
    return (
      <div className="sheet">
        <h1 className="heard">Grow-outs</h1>
        <EmptyState noun="season" action={<ButtonLink href="/bring-in">Bring a notebook in</ButtonLink>}>
          No grow-out is on record yet. One comes with a notebook’s files, or with each year that is typed in.
        </EmptyState>
      </div>
    );
  }
  return (
    <div className="sheet stack">
      <PageHead
        title={of === null ? "Grow-outs" : `Grow-outs of ${of}`}
        kind={of === null ? undefined : <Link href="/grow-outs">All grow-outs</Link>}
        figure={<Figure value={counted(growOuts.length, "grow-out")}>{headSentence(growOuts)}</Figure>}
      />
      <DataTable
        caption="Grow-outs"
        noun="grow-out"
        columns={columns}
        rows={growOuts.map(growOutRow)}
        path="/grow-outs"
        address={readTableAddress(parameters, columns)}
        others={parameters}
        filterLabel="Find a grow-out"
        csv="/grow-outs/csv"
      />
    </div>
  );
}

function headSentence(growOuts: readonly GrowOutRow[]): string {
  const gave = growOuts.filter((row) => row.lots.length > 0 && !row.clonal);
  const narrow = gave.filter(
    (row) => row.effectiveSize !== null && row.plantsMin !== null && row.effectiveSize < row.plantsMin,
  ).length;
  const unknown = gave.filter((row) => row.effectiveSize === null).length;
  const parts = [
    narrow > 0 ? `${narrow} ${narrow === 1 ? "was" : "were"} narrower than the crop’s floor of plants` : "",
    unknown > 0 ? `of ${unknown} the plants were not all written down` : "",
  ].filter(Boolean);
  return parts.length > 0 ? `on record. ${parts.join("; ")}.` : "on record.";
}
