import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { Section } from "@/components/frame";
import type { SearchParameters } from "@/components/tables";
import { AskTwice } from "@/components/ui";
import { listPlots } from "@/lib/registry/grow-outs/read-plan-ground";
import { current } from "../../../_session/current";
import { takeOff } from "../../_actions/plot";
import { plotOption } from "../../_form/plan-offers";
import { GrowOutPageHead } from "../_components/grow-out-page-head";
import { growOutOfPage } from "../read";
import { DaysForm, PlotForm } from "./plot-form";

export const metadata: Metadata = { title: "The plot of a grow-out" };

interface Props {
  params: Promise<{ id: string }>;
  searchParams: Promise<SearchParameters>;
}

export default async function PlotOfGrowOut({ params, searchParams }: Props) {
  const { db, today } = await current("record");
  const read = await growOutOfPage((await params).id);
  if (!read) notFound();
  const { growOut, variety, plots } = read;
  const replanted = (await searchParams).replanted === "yes" || plots.length > 0;
  const standing = new Set(plots.map((plot) => plot.id));
  const others = (await listPlots(db)).filter((plot) => !standing.has(plot.id));
  const last = plots.findLast((plot) => plot.toOn === null);
  return (
    <div className="sheet stack">
      <GrowOutPageHead
        growOut={growOut}
        variety={{ ...variety, cropKey: variety.crop.key }}
        title={plots.length > 0 ? "Its plots" : "Its plot"}
      >
        {replanted
          ? "Roots that were lifted flower where they are replanted: the neighbours that matter are those of that plot."
          : "Its neighbours are looked for from where it stands."}
      </GrowOutPageHead>
      {plots.map((plot) => (
        <Section
          key={plot.standId}
          id={`stand-${plot.standId}`}
          title={plot.place ? `${plot.name}, ${plot.place}` : plot.name}
        >
          <DaysForm
            growOutId={growOut.id}
            standId={plot.standId}
            start={{ fromOn: plot.fromOn ?? "", toOn: plot.toOn ?? "" }}
          />
          <div>
            <AskTwice
              button="It never stood there"
              buttonKind="quiet"
              title={`Take ${growOut.name} off ${plot.name}?`}
              says={<p>The plot itself stays on record, with whatever else stands on it.</p>}
              confirm="It never stood there"
              kind="entry"
              action={takeOff.bind(null, growOut.id, plot.standId)}
            />
          </div>
        </Section>
      ))}
      <Section id="put" title={plots.length > 0 ? "Replanted on another plot" : "Where it stands"}>
        <PlotForm
          growOutId={growOut.id}
          start={{ fromOn: plots.length > 0 ? today : (growOut.sown ?? "") }}
          plots={others.map(plotOption)}
          left={last ? last.name : null}
        />
      </Section>
    </div>
  );
}
