import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { PageHead } from "@/components/frame";
import type { SearchParameters } from "@/components/tables";
import { dateInWords } from "@/lib/display/dates";
import { readFounders } from "@/lib/registry/kinships/read-founders";
import { current } from "../../../../_session/current";
import { KinshipForm } from "../kinship-forms";

export const metadata: Metadata = { title: "Two founders" };

export default async function NewKinship({
  params,
  searchParams,
}: {
  params: Promise<{ id: string }>;
  searchParams: Promise<SearchParameters>;
}) {
  const { db } = await current("record");
  const { id } = await params;
  const read = await readFounders(db, id);
  if (!read) notFound();
  const { first, second } = await searchParams;
  const text = (value: unknown) => (typeof value === "string" ? value : "");
  return (
    <div className="sheet stack">
      <PageHead title="How two founders are related" kind={read.variety.name} />
      <KinshipForm
        varietyId={id}
        start={{ first: text(first), second: text(second) }}
        founders={read.founders.map(({ number, year }) => ({
          number,
          words: year === null ? number : `${number}, ${dateInWords(year)}`,
        }))}
      />
    </div>
  );
}
