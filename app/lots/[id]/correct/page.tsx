import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { namesForForms } from "@/lib/registry/lots/names-for-forms";
import { readHead } from "@/lib/registry/lots/read-head";
import { current } from "../../../_session/current";
import { fieldsOfLot } from "../../_form/fields-of-lot";
import { LotPageHead } from "../../_parts/lot-page-head";
import { CorrectLotForm } from "./correct-lot-form";

export const metadata: Metadata = { title: "Put a lot right" };

export default async function CorrectLot({ params }: { params: Promise<{ id: string }> }) {
  const { db } = await current("correct-at-desk");
  const lot = await readHead(db.read, (await params).id);
  if (!lot) notFound();
  const { stewards } = await namesForForms(db);
  return (
    <div className="sheet stack">
      <LotPageHead lot={lot} title="Put it right">
        Its number and its variety stay: a lot entered under the wrong one is taken back in History and entered again.
      </LotPageHead>
      <CorrectLotForm
        lotId={lot.id}
        founder={lot.kind === "founder"}
        start={fieldsOfLot(lot)}
        stewards={stewards.map((name) => ({ value: name, words: name }))}
      />
    </div>
  );
}
