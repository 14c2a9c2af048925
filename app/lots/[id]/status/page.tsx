import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { Section } from "@/components/frame";
import type { SearchParameters } from "@/components/tables";
import { Notice } from "@/components/ui";
import { Way } from "@/components/ui/offered";
import { dateInWords } from "@/lib/display/dates";
import { readLife } from "@/lib/registry/lots/read-life";
import { releasedStatuses } from "@/lib/schemas/lots/lot-moves";
import { current } from "../../../_session/current";
import { LotPageHead } from "../../_parts/lot-page-head";
import { statusOptions } from "../../_words/choices";
import { DecideForm } from "./decide-form";
import { MoveForm } from "./move-form";

export const metadata: Metadata = { title: "How it stands" };

/** How a lot stands that is let out of quarantine: only a comparison leads there. */
const released: readonly string[] = releasedStatuses;

export default async function Status({
  params,
  searchParams,
}: {
  params: Promise<{ id: string }>;
  searchParams: Promise<SearchParameters>;
}) {
  const { db, today } = await current("decide");
  const life = await readLife(db, (await params).id);
  if (!life) notFound();
  const { lot, grownIn, questions, strains } = life;
  const otherwise = (await searchParams).otherwise === "yes";
  const stands = statusOptions.find((option) => option.value === lot.status)?.words ?? "usable, as far as anybody said";
  const apart = lot.status === "quarantine";
  const moves = apart ? life.moves.filter((status) => !released.includes(status)) : life.moves;
  return (
    <div className="sheet stack">
      <LotPageHead lot={lot} title="How it stands">
        It is {stands}
        {lot.statusReason ? `: ${lot.statusReason}` : ""}.
      </LotPageHead>
      {apart && !otherwise ? (
        <Section id="decide" title="Grown apart and compared">
          <div className="stack">
            <p className="measure">
              A lot that came back may have drifted or crossed. Grow it apart beside the home strain, one season or two;
              look at the marks of the type, the time of flower, sick plants. Then decide.{" "}
              {grownIn.length === 0 ? "No grow-out of it is on record yet. " : "It was grown in "}
              {grownIn.map((growOut, index) => (
                <span key={growOut.id}>
                  {index > 0 ? ", " : ""}
                  <Link href={`/grow-outs/${growOut.id}`}>{growOut.name}</Link>
                  {growOut.sown ? `, sown ${dateInWords(growOut.sown)}` : ""}
                </span>
              ))}
              {grownIn.length > 0 ? "." : <Way href={`/grow-outs/new?lot=${lot.id}`}>Plan one</Way>}
            </p>
            <DecideForm
              lotId={lot.id}
              today={today}
              grown={grownIn.length > 0}
              questions={questions}
              strains={strains}
              strain={lot.strain ?? ""}
            />
          </div>
        </Section>
      ) : null}
      {apart && !otherwise ? (
        <p>
          Or <Way href={`/lots/${lot.id}/status?otherwise=yes`}>move it otherwise</Way>: on hold, not for seed,
          discarded.
        </p>
      ) : moves.length > 0 ? (
        <Section id="move" title="Move it on">
          <MoveForm
            lotId={lot.id}
            today={today}
            options={statusOptions.filter((option) => moves.includes(option.value))}
          />
        </Section>
      ) : (
        <Notice title="It stays as it is">
          <p>Nothing comes back from discarded. If that was a mistaken entry, take it back in its history.</p>
        </Notice>
      )}
    </div>
  );
}
