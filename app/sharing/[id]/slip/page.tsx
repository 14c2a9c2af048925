import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { PageHead } from "@/components/frame";
import { Way } from "@/components/ui/offered";
import { readTests } from "@/lib/registry/lots/read-tests";
import { readTransfer } from "@/lib/registry/transfers/read-transfer";
import { current } from "../../../_session/current";
import { unitsOf } from "../../../lots/_words/units-of";
import { PrintButton } from "../../_parts/print-button";
import { Slip } from "./slip";

export const metadata: Metadata = { title: "Hand-over slip" };

export default async function SlipPage({ params }: { params: Promise<{ id: string }> }) {
  const { db, settings } = await current("desk");
  const read = await readTransfer(db, (await params).id);
  if (!read) notFound();
  const tests = await readTests(db, read.lot.id);
  return (
    <div className="sheet stack">
      <div className="not-on-paper">
        <PageHead
          title="Hand-over slip"
          kind={<Way href={`/sharing/${read.transfer.id}`}>To the hand-over</Way>}
          actions={<PrintButton />}
        >
          <p className="measure">
            Goes with the seed, inside the bag and not only on it. It names no person and no exact place; write by hand
            whom to ask.
          </p>
        </PageHead>
      </div>
      <Slip read={read} tests={tests} units={unitsOf(settings)} />
    </div>
  );
}
