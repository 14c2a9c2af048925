import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { PageHead } from "@/components/frame";
import { Notice } from "@/components/ui";
import { listStewards } from "@/lib/registry/stewards/list-stewards";
import { readVariety } from "@/lib/registry/varieties/read-variety";
import { current } from "../../../../_session/current";
import { storeAddition } from "../../../_actions/add";
import { RecordForm } from "../../../_forms/record-form";
import { additionFields, additions, additionWords } from "../../../_words/additions";

export const metadata: Metadata = { title: "Add to a variety" };

export default async function AddToVariety({
  params,
  searchParams,
}: {
  params: Promise<{ id: string; what: string }>;
  searchParams: Promise<{ steward?: string }>;
}) {
  const { db, settings, today } = await current("record");
  const { id, what: asked } = await params;
  const what = additions.find((each) => each === asked);
  const read = what ? await readVariety(db, id, settings, today) : null;
  if (!what || !read) notFound();
  const { steward } = await searchParams;
  const people = (await listStewards(db)).flatMap((each) => each.name ?? []);
  const lots = read.lots.map((lot) => ({
    number: lot.number,
    holder: lot.holderId === null ? null : (read.people.get(lot.holderId) ?? null),
  }));
  const { title, lead, confirm } = additionWords[what];
  const nobody = people.length === 0 && what === "word";
  return (
    <div className="sheet stack">
      <PageHead title={title} kind={read.variety.name}>
        <p className="measure">{lead}</p>
      </PageHead>
      {nobody ? (
        <Notice title="No steward is on record yet">
          <p>
            <a href="/stewards/new">Record the steward first</a>; then their word can be written down here.
          </p>
        </Notice>
      ) : (
        <RecordForm
          fields={additionFields(what, {
            people,
            lots,
            ofCrop: read.ofCrop,
            steward: steward ? read.people.get(steward) : undefined,
          })}
          action={storeAddition.bind(null, id, what)}
          confirm={confirm}
          back={{ href: `/varieties/${id}`, words: `Back to ${read.variety.name}` }}
        />
      )}
    </div>
  );
}
