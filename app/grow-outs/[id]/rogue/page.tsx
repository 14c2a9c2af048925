import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { Cautions } from "@/components/cautions";
import { current } from "../../../_session/current";
import { peopleByName } from "../../_field/who";
import { GrowOutPageHead } from "../_components/grow-out-page-head";
import { fieldOfPage, growOutOfPage } from "../read";
import { RogueForm } from "./rogue-form";

export const metadata: Metadata = { title: "A rogue pass" };

export default async function RoguePassPage({ params }: { params: Promise<{ id: string }> }) {
  await current("record-in-field");
  const { id } = await params;
  const [read, field] = [await growOutOfPage(id), await fieldOfPage(id)];
  if (!read || !field) notFound();
  const { growOut, variety, parents, people } = read;
  return (
    <div className="sheet stack">
      <GrowOutPageHead growOut={growOut} variety={{ ...variety, cropKey: variety.crop.key }} title="A rogue pass">
        A walk through the plants: how many were looked at, and how many were pulled for which reason. A walk that found
        none is worth as much as one that did.
      </GrowOutPageHead>
      <Cautions step="rogue" crop={variety.crop.key} />
      <RogueForm
        growOutId={id}
        people={peopleByName(people)}
        by={growOut.stewardId ?? ""}
        sown={parents.map((lot) => ({ id: lot.id, number: lot.number }))}
        ground={field.size}
      />
    </div>
  );
}
