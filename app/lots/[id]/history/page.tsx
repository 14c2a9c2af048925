import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { idsOfLot } from "@/lib/registry/lots/lot-history";
import { readHead } from "@/lib/registry/lots/read-head";
import { current } from "../../../_session/current";
import { HistoryOf } from "../../../history/_components/history-of";
import { LotPageHead } from "../../_parts/lot-page-head";

export const metadata: Metadata = { title: "History of a lot" };

export default async function LotHistory({ params }: { params: Promise<{ id: string }> }) {
  const { db } = await current("history");
  const lot = await readHead(db.read, (await params).id);
  if (!lot) notFound();
  return (
    <div className="sheet stack">
      <LotPageHead lot={lot} title="Who wrote what, and when">
        The lot itself, its ledger, tests, containers and what is told of it. Nothing that was written is ever gone.
      </LotPageHead>
      <HistoryOf ids={await idsOfLot(db.read, lot.id)} asOf={lot.id} />
    </div>
  );
}
