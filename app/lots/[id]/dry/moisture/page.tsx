import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { readHead } from "@/lib/registry/lots/read-head";
import { current } from "../../../../_session/current";
import { LotPageHead } from "../../../_parts/lot-page-head";
import { MoistureForm } from "../drying-forms";

export const metadata: Metadata = { title: "Read the moisture" };

export default async function ReadMoisture({ params }: { params: Promise<{ id: string }> }) {
  const { db, today } = await current("desk");
  const lot = await readHead(db.read, (await params).id);
  if (!lot) notFound();
  return (
    <div className="sheet stack">
      <LotPageHead lot={lot} title="Read the moisture">
        By a meter, by weighing a sample before and after it was dried out, or by a humidity card that has lain a day in
        the closed jar.
      </LotPageHead>
      <MoistureForm lotId={lot.id} today={today} />
    </div>
  );
}
