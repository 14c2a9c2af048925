import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { readTransfer } from "@/lib/registry/transfers/read-transfer";
import { current } from "../../../_session/current";
import { LotPageHead } from "../../../lots/_parts/lot-page-head";
import { unitsOf } from "../../../lots/_words/units-of";
import { CorrectTransferForm } from "./correct-transfer-form";
import { typedIn } from "./typed-in";

export const metadata: Metadata = { title: "Put a hand-over right" };

export default async function CorrectTransfer({ params }: { params: Promise<{ id: string }> }) {
  const { db, settings } = await current("correct-at-desk");
  const read = await readTransfer(db, (await params).id);
  if (!read) notFound();
  const units = unitsOf(settings);
  return (
    <div className="sheet stack">
      <LotPageHead lot={read.lot} title="Put a hand-over right">
        Day, amount and words. Both ledgers follow; what stood there before stays to be read. Who gave and who got is
        not changed here: if that is wrong, take the hand-over back in History and write it anew.
      </LotPageHead>
      <CorrectTransferForm
        transferId={read.transfer.id}
        start={typedIn(read.transfer, units)}
        weightUnit={units.weight}
        seeds={read.lot.thousandSeedGrams !== null}
      />
    </div>
  );
}
