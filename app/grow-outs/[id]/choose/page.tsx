import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { Notice } from "@/components/ui";
import { Way } from "@/components/ui/offered";
import { counted } from "@/lib/display/plurals";
import { readChoice } from "@/lib/registry/plants/read-choice";
import { mayStand } from "@/lib/registry/plants/read-plants-grid";
import { current } from "../../../_session/current";
import { GrowOutPageHead } from "../_components/grow-out-page-head";
import { ChooseHere } from "./choose-here";

export const metadata: Metadata = { title: "Choose what to keep" };

type Parameters = {
  params: Promise<{ id: string }>;
  searchParams: Promise<Record<string, string | string[] | undefined>>;
};

export default async function ChoosePage({ params, searchParams }: Parameters) {
  const { db, settings, today } = await current();
  const { id } = await params;
  const choice = await readChoice(db, id, { settings, today });
  if (!choice) notFound();
  const { read, ground } = choice;
  const scored = ground.plants.filter(({ scores }) => Object.keys(scores).length > 0).length;
  const weighed = ground.traits.filter(({ better }) => better !== null);
  return (
    <div className="sheet stack">
      <GrowOutPageHead
        growOut={read.growOut}
        variety={{ ...read.variety, cropKey: read.variety.crop.key }}
        title="Choose what to keep"
      >
        {scored === 0
          ? "No plant of it is scored yet."
          : `${counted(scored, "plant")} of ${ground.plants.length} ${scored === 1 ? "is" : "are"} scored. Fewer kept stand higher above their neighbours, and carry less of the variety on: both are seen here before anything is written.`}
      </GrowOutPageHead>
      {weighed.length === 0 || scored === 0 ? (
        <Notice title="There is nothing to choose by yet">
          <p>
            {scored === 0
              ? "Plants are ranked by their scores. "
              : "Of no trait that was scored anybody said which end is good. "}
            <Way href={scored === 0 ? `/grow-outs/${id}/plants` : `/varieties/${read.variety.id}/traits`}>
              {scored === 0 ? "Mark and score plants" : "Say it of a trait"}
            </Way>
          </p>
        </Notice>
      ) : (
        <ChooseHere
          ground={ground}
          asked={addressOf(await searchParams)}
          today={mayStand(read.growOut, today) ? today : ""}
          people={[...read.people].map(([value, words]) => ({ value, words }))}
        />
      )}
    </div>
  );
}

function addressOf(asked: Awaited<Parameters["searchParams"]>): string {
  const parameters = new URLSearchParams();
  for (const [key, value] of Object.entries(asked))
    for (const each of value === undefined ? [] : [value].flat()) parameters.append(key, each);
  return parameters.toString();
}
