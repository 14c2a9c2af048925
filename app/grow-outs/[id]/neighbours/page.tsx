import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { PageHead, Section } from "@/components/frame";
import { Explained, Figure } from "@/components/numbers";
import { PlotPlan } from "@/components/plot-plan";
import { SeedCoat } from "@/components/seed-coat";
import type { SearchParameters } from "@/components/tables";
import { ButtonLink } from "@/components/ui";
import { Way } from "@/components/ui/offered";
import { storedSeedCoat } from "@/lib/schemas/varieties/seed-coat";
import { current } from "../../../_session/current";
import { unitsOf } from "../../../lots/_words/units-of";
import { ClaimedLots } from "../../_neighbours/claimed-lots";
import { planInWords, planOf } from "../../_neighbours/drawn";
import { gradeExplanation } from "../../_neighbours/explain-grade";
import { FloweringOfNeighbours } from "../../_neighbours/flowering-of-neighbours";
import { gradeFigure, gradeSentence, gradeWaits } from "../../_neighbours/grade-words";
import { LookFor } from "../../_neighbours/look-for";
import { MethodsUsed } from "../../_neighbours/methods-used";
import { NeighbourList } from "../../_neighbours/neighbour-list";
import { PurposeSwitch } from "../../_neighbours/purpose-switch";
import { noShareSentence, shareExplanation, shareFigure, shareSentence } from "../../_neighbours/share-words";
import { neighboursOfPage, purposeAsked } from "./read";

type Parameters = { params: Promise<{ id: string }>; searchParams: Promise<SearchParameters> };

async function asked({ params, searchParams }: Parameters) {
  const { purpose } = await searchParams;
  return neighboursOfPage((await params).id, purposeAsked(purpose));
}

export async function generateMetadata(parameters: Parameters): Promise<Metadata> {
  const found = await asked(parameters);
  return { title: found ? `Neighbours of ${found.read.ground.name}` : "A grow-out" };
}

/** Other plantings and wild stands about a grow-out: the grade of its seed, the plan, the flowering, what was done. */
export default async function NeighboursPage(parameters: Parameters) {
  const { settings } = await current();
  const found = await asked(parameters);
  if (!found) notFound();
  const { read, assessment } = found;
  const { ground } = read;
  const units = unitsOf(settings);
  const at = `/grow-outs/${ground.id}/neighbours`;
  const given = { read, assessment, units, at };
  return (
    <div className="sheet stack">
      <PageHead
        kind={
          <>
            Grow-out <Link href={`/grow-outs/${ground.id}`}>{ground.name}</Link> of{" "}
            <Link href={`/varieties/${ground.varietyId}`}>{ground.variety}</Link>
          </>
        }
        title="Neighbours"
        mark={<SeedCoat name={ground.variety} crop={ground.cropKey} coat={storedSeedCoat(ground.seedCoat)} size={56} />}
        figure={
          <Figure
            value={gradeFigure(assessment)}
            waiting={gradeWaits(assessment)}
            explanation={gradeExplanation(read, assessment, units)}
          >
            {gradeSentence(read, assessment, units)}
          </Figure>
        }
        actions={
          <>
            <ButtonLink href={`${at}/new`} kind="chief">
              One more neighbour
            </ButtonLink>
            <ButtonLink href={`${at}/looked`}>Somebody looked</ButtonLink>
            <ButtonLink href={`${at}/methods/new`}>What was done</ButtonLink>
          </>
        }
      />
      <Section id="plan" title="Plot plan" aside={<PurposeSwitch assessment={assessment} at={at} units={units} />}>
        <PlotPlan plan={planOf(assessment, units)} units={units} label={planInWords(assessment, units)} />
      </Section>
      <Section id="sources" title="Neighbour sources">
        <NeighbourList {...given} />
      </Section>
      <FloweringOfNeighbours {...given} />
      <Section id="share" title="How much may have come in">
        {assessment.share.ok ? (
          <Explained explanation={shareExplanation(read, assessment.share.value, units)}>
            <p>
              <b className="counts">{shareFigure(assessment.share.value)}</b> {shareSentence(assessment.share.value)}
            </p>
          </Explained>
        ) : (
          <p className="quiet">{noShareSentence(assessment.share.refusals[0])}</p>
        )}
      </Section>
      <Section id="methods" title="What was done against it" aside={<Way href={`${at}/methods/new`}>one more</Way>}>
        <MethodsUsed {...given} />
      </Section>
      <Section id="look-for" title="What to look for">
        <LookFor read={read} assessment={assessment} />
      </Section>
      <Section id="claim" title="What its lots claim">
        <ClaimedLots {...given} />
      </Section>
    </div>
  );
}
