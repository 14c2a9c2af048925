import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { AskTwice } from "@/components/ui";
import { readNeighbours } from "@/lib/registry/neighbours/read-neighbours";
import { current } from "../../../../../_session/current";
import { takeMethodOut } from "../../../../_actions/neighbours";
import { FormHead } from "../../../../_neighbours/form-head";
import { MethodForm } from "../../../../_neighbours/small-forms";

export const metadata: Metadata = { title: "What was done against other pollen" };

export default async function CorrectMethod({ params }: { params: Promise<{ id: string; method: string }> }) {
  const { db } = await current("correct-in-field");
  const { id, method: methodId } = await params;
  const read = await readNeighbours(db, id);
  const method = read?.methods.find((each) => each.id === methodId);
  if (!read || !method) notFound();
  const start = {
    method: method.method,
    evidence: method.evidence ?? "",
    fromOn: method.fromOn ?? "",
    toOn: method.toOn ?? "",
    note: method.note ?? "",
  };
  return (
    <div className="sheet stack">
      <FormHead ground={read.ground} title={`What was done: ${method.method}`} />
      <MethodForm growOutId={id} methodId={methodId} start={start} />
      <AskTwice
        button="Take it out"
        buttonKind="quiet"
        title={`Take out that there was ${method.method}?`}
        says={<p>Only where it was not done.</p>}
        confirm="Take it out"
        kind="entry"
        action={takeMethodOut.bind(null, id, methodId)}
      />
    </div>
  );
}
