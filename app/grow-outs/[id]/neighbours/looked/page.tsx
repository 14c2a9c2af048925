import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { AskTwice } from "@/components/ui";
import { readNeighbours } from "@/lib/registry/neighbours/read-neighbours";
import { current } from "../../../../_session/current";
import { nobodyLooked } from "../../../_actions/neighbours";
import { FormHead } from "../../../_neighbours/form-head";
import { LookForm } from "../../../_neighbours/small-forms";

export const metadata: Metadata = { title: "Somebody looked for neighbours" };

export default async function Looked({ params }: { params: Promise<{ id: string }> }) {
  const { db, today } = await current("record-in-field");
  const { id } = await params;
  const read = await readNeighbours(db, id);
  if (!read) notFound();
  const before = read.ground.neighboursLookedOn;
  return (
    <div className="sheet stack">
      <FormHead ground={read.ground} title="Somebody looked">
        Walk the surroundings, ask over the fence: what is sown, what bolts, what grows wild. Only a look makes an empty
        list mean none.
      </FormHead>
      <LookForm growOutId={id} start={{ on: before ?? today }} some={read.neighbours.length > 0} />
      {before === null ? null : (
        <AskTwice
          button="Nobody looked after all"
          buttonKind="quiet"
          title="Take back that somebody looked?"
          says={<p>The neighbourhood is then not assessed. Sources on record stay.</p>}
          confirm="Nobody looked"
          kind="entry"
          action={nobodyLooked.bind(null, id)}
        />
      )}
    </div>
  );
}
