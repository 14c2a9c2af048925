import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { AskTwice } from "@/components/ui";
import { namesForNeighbours } from "@/lib/registry/neighbours/names-for-neighbours";
import { readNeighbours } from "@/lib/registry/neighbours/read-neighbours";
import { current } from "../../../../_session/current";
import { unitsOf } from "../../../../lots/_words/units-of";
import { takeNeighbourOut } from "../../../_actions/neighbours";
import { FormHead } from "../../../_neighbours/form-head";
import { NeighbourForm } from "../../../_neighbours/neighbour-form";
import { neighbourAsTyped, neighbourOffers } from "../../../_neighbours/neighbour-offers";

export const metadata: Metadata = { title: "A neighbour source" };

export default async function CorrectNeighbour({ params }: { params: Promise<{ id: string; source: string }> }) {
  const { db, settings } = await current("correct-in-field");
  const { id, source } = await params;
  const read = await readNeighbours(db, id);
  const neighbour = read?.neighbours.find((each) => each.id === source);
  if (!read || !neighbour) notFound();
  const units = unitsOf(settings);
  const notes = read.notes.filter((note) => note.neighbourId === source).length;
  return (
    <div className="sheet stack">
      <FormHead ground={read.ground} title={neighbour.what} />
      <NeighbourForm
        growOutId={id}
        neighbourId={source}
        start={neighbourAsTyped(neighbour, units)}
        {...neighbourOffers(await namesForNeighbours(db), read, units)}
      />
      <AskTwice
        button="Take it out"
        buttonKind="quiet"
        title={`Take ${neighbour.what} out?`}
        says={
          <p>
            Only where it never stood there.{notes > 0 ? " What was noted of its flowering goes with it." : ""} If it
            was mown or dug out, write that in its note instead.
          </p>
        }
        confirm="Take it out"
        kind="entry"
        action={takeNeighbourOut.bind(null, id, source)}
      />
    </div>
  );
}
