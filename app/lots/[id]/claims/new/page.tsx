import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { readHead } from "@/lib/registry/lots/read-head";
import { current } from "../../../../_session/current";
import { LotPageHead } from "../../../_parts/lot-page-head";
import { TellForm } from "./tell-form";

export const metadata: Metadata = { title: "What is told of a lot" };

export default async function NewClaim({ params }: { params: Promise<{ id: string }> }) {
  const { db } = await current("record");
  const lot = await readHead(db.read, (await params).id);
  if (!lot) notFound();
  return (
    <div className="sheet stack">
      <LotPageHead lot={lot} title="What is told of where it is from">
        What the records do not show: an earlier jar some grow-outs back, the same seed in another hand, or that nothing
        is known before here. Two stories that contradict each other may stand side by side.
      </LotPageHead>
      <TellForm lotId={lot.id} founder={lot.kind === "founder"} />
    </div>
  );
}
