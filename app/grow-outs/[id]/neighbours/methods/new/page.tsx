import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { readNeighbours } from "@/lib/registry/neighbours/read-neighbours";
import { current } from "../../../../../_session/current";
import { FormHead } from "../../../../_neighbours/form-head";
import { MethodForm } from "../../../../_neighbours/small-forms";

export const metadata: Metadata = { title: "What was done against other pollen" };

export default async function NewMethod({ params }: { params: Promise<{ id: string }> }) {
  const { db } = await current("record-in-field");
  const { id } = await params;
  const read = await readNeighbours(db, id);
  if (!read) notFound();
  return (
    <div className="sheet stack">
      <FormHead ground={read.ground} title="What was done">
        How other pollen was kept off. Methods add up: write each down by itself.
      </FormHead>
      <MethodForm growOutId={id} start={{}} />
    </div>
  );
}
