import type { Metadata } from "next";
import Link from "next/link";
import { PageHead } from "@/components/frame";
import { DataTable, readTableAddress, type SearchParameters } from "@/components/tables";
import { readSharing } from "@/lib/registry/transfers/read-sharing";
import { current } from "../../_session/current";
import { unitsOf } from "../../lots/_words/units-of";
import { transferColumns, transferRow } from "../_list/transfer-rows";

export const metadata: Metadata = { title: "Every hand-over" };

export default async function EveryHandOver({ searchParams }: { searchParams: Promise<SearchParameters> }) {
  const { db, settings, today } = await current("desk");
  const parameters = await searchParams;
  const read = await readSharing(db, settings, today);
  const units = unitsOf(settings);
  return (
    <div className="sheet stack">
      <PageHead title="Every hand-over" kind={<Link href="/sharing">Sharing</Link>}>
        <p className="measure">What left a jar for another hand, and what came in, the newest first.</p>
      </PageHead>
      <DataTable
        caption="Every hand-over, the newest first"
        noun="hand-over"
        columns={transferColumns}
        rows={read.transfers.map((each) => transferRow(each, read, units))}
        path="/sharing/given"
        address={readTableAddress(parameters, transferColumns)}
        filterLabel="Find a hand-over"
        csv="/sharing/csv"
        empty={<p>Nothing went from hand to hand yet.</p>}
      />
    </div>
  );
}
