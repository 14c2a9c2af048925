import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { readHead } from "@/lib/registry/lots/read-head";
import { current } from "../../../_session/current";
import { LotPageHead } from "../../_parts/lot-page-head";
import { WeighForm } from "./weigh-form";

export const metadata: Metadata = { title: "Count and weigh seeds" };

export default async function Weigh({ params }: { params: Promise<{ id: string }> }) {
  const { db, today } = await current("desk");
  const lot = await readHead(db.read, (await params).id);
  if (!lot) notFound();
  return (
    <div className="sheet stack">
      <LotPageHead lot={lot} title="Count and weigh seeds">
        Count out a hundred seeds as they come, plump and thin alike, and weigh them. Two portions show whether the
        scales can be trusted. From then on grams are seeds.
      </LotPageHead>
      <WeighForm lotId={lot.id} today={today} />
    </div>
  );
}
