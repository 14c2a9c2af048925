import type { Metadata } from "next";
import { notFound } from "next/navigation";
import type { SearchParameters } from "@/components/tables";
import { readHead } from "@/lib/registry/lots/read-head";
import { deskKinds } from "@/lib/schemas/ledger/ledger-entry";
import { current } from "../../../../_session/current";
import { LotPageHead } from "../../../_parts/lot-page-head";
import { unitsOf } from "../../../_words/units-of";
import { NewEntryForm } from "./new-entry-form";

export const metadata: Metadata = { title: "Write into the ledger" };

export default async function NewEntry({
  params,
  searchParams,
}: {
  params: Promise<{ id: string }>;
  searchParams: Promise<SearchParameters>;
}) {
  const { db, settings, today } = await current("desk");
  const lot = await readHead(db.read, (await params).id);
  if (!lot) notFound();
  const asked = (await searchParams).kind;
  const kind = deskKinds.find((each) => each === asked) ?? "weighed";
  return (
    <div className="sheet stack">
      <LotPageHead lot={lot} title="Write into the ledger">
        What came in, what left, or what the scales say. The balance is the sum of the entries.
      </LotPageHead>
      <NewEntryForm
        lotId={lot.id}
        start={{ kind, unit: "g", on: today }}
        weightUnit={unitsOf(settings).weight}
        seeds={lot.thousandSeedGrams !== null}
      />
    </div>
  );
}
