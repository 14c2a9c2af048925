import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { PageHead } from "@/components/frame";
import { mayStand, readPlantsGrid } from "@/lib/registry/plants/read-plants-grid";
import { tagsOnRecord } from "@/lib/registry/plants/tags-on-record";
import { nextNumber } from "@/lib/schemas/plants/next-number";
import { current } from "../../../../_session/current";
import { AddPlantsForm } from "./add-plants-form";

export const metadata: Metadata = { title: "Add plants" };

export default async function AddPlantsPage({ params }: { params: Promise<{ id: string }> }) {
  const { db, today } = await current("record-in-field");
  const { id } = await params;
  const read = await readPlantsGrid(db, id);
  if (!read) notFound();
  const from = String(nextNumber(tagsOnRecord(read.plants)));
  return (
    <div className="sheet stack">
      <PageHead
        title="Add plants"
        kind={
          <>
            <Link href={`/grow-outs/${id}`}>{read.growOut.name}</Link>, grow-out of {read.growOut.variety}
          </>
        }
      >
        <p className="measure">
          A tag is what stands on the tape, peg or tie, as it is written. Two plants may have the same one: it is asked
          which is which, and neither is renamed.
        </p>
      </PageHead>
      <AddPlantsForm
        growOutId={id}
        start={{ from, on: mayStand(read.growOut, today) ? today : "" }}
        people={read.people.map(({ stewardId, name }) => ({ value: stewardId, words: name }))}
      />
    </div>
  );
}
