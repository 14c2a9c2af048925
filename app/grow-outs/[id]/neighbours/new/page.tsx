import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { namesForNeighbours } from "@/lib/registry/neighbours/names-for-neighbours";
import { readNeighbours } from "@/lib/registry/neighbours/read-neighbours";
import { current } from "../../../../_session/current";
import { unitsOf } from "../../../../lots/_words/units-of";
import { FormHead } from "../../../_neighbours/form-head";
import { NeighbourForm } from "../../../_neighbours/neighbour-form";
import { neighbourOffers } from "../../../_neighbours/neighbour-offers";

export const metadata: Metadata = { title: "A neighbour source" };

export default async function NewNeighbour({ params }: { params: Promise<{ id: string }> }) {
  const { db, settings } = await current("record-in-field");
  const read = await readNeighbours(db, (await params).id);
  if (!read) notFound();
  const offers = neighbourOffers(await namesForNeighbours(db), read, unitsOf(settings));
  return (
    <div className="sheet stack">
      <FormHead ground={read.ground} title="A neighbour source">
        Another planting or wild stand that could send pollen. Of the same species, or kin to it: the rule then says
        whether it stands too close.
      </FormHead>
      <NeighbourForm growOutId={read.ground.id} start={{ crop: read.ground.cropId }} {...offers} />
    </div>
  );
}
