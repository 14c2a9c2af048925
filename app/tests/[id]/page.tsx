import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { Cautions } from "@/components/cautions";
import { Section } from "@/components/frame";
import { ButtonLink, Notice } from "@/components/ui";
import { Offered } from "@/components/ui/offered";
import { readGerminationTest } from "@/lib/registry/germination-tests/read-germination-test";
import { current } from "../../_session/current";
import { HistoryOf } from "../../history/_components/history-of";
import { Pictures } from "../../pictures/_parts/pictures";
import { ComparedSection } from "./_components/compared-section";
import { CountAgain } from "./_components/count-again";
import { GerminationOfLot } from "./_components/germination-of-lot";
import { HowSetUp } from "./_components/how-set-up";
import { OfficialLines } from "./_components/official-lines";
import { ReplicateTable } from "./_components/replicate-table";
import { SpreadSection } from "./_components/spread-section";
import { TestHead } from "./_components/test-head";
import { yearsOfLot } from "./_components/years-of-lot";

type Params = { params: Promise<{ id: string }> };

export const metadata: Metadata = { title: "Germination test" };

export default async function GerminationTestPage({ params }: Params) {
  const { db, settings, today } = await current();
  const read = await readGerminationTest(db, (await params).id, settings.renewalPlan, today);
  if (!read) notFound();
  const { lot, warnings, totals, replicates } = read;
  const odd = warnings.filter((warning) => warning.code !== "treated-seed");
  return (
    <div className="sheet">
      <TestHead read={read} />
      <div className="stack">
        <Cautions
          step={totals.stage === "final" ? "jar" : "test"}
          treatment={lot.treatment}
          substance={lot.treatmentSubstance}
        />
        {odd.length > 0 ? (
          <Notice title="Look at this again" kind="waiting">
            {odd.map((warning) => (
              <p key={warning.code}>{warning.text}</p>
            ))}
          </Notice>
        ) : null}
      </div>
      {totals.stage === "final" ? null : (
        <Offered deed="desk">
          <CountAgain read={read} today={today} />
        </Offered>
      )}
      <Section
        id="replicates"
        title="What was counted"
        aside={<Offered deed="correct-at-desk">press a count to put it right</Offered>}
      >
        <div className="stack-near">
          <ReplicateTable read={read} />
          {totals.stage === "final" && totals.left > 0 ? (
            <Offered deed="desk">
              <CountAgain read={read} today={today} />
            </Offered>
          ) : null}
        </div>
      </Section>
      {replicates.length > 1 && read.result?.spread ? <SpreadSection read={read} spread={read.result.spread} /> : null}
      <ComparedSection read={read} />
      <GerminationOfLot read={read} years={yearsOfLot(read)} renewal={settings.renewalPlan} />
      <Pictures
        subject={{ kind: "test", id: read.test.id }}
        of={`test ${read.test.name}`}
        none="The cloth on the day of the count."
      />
      <HowSetUp read={read} />
      <OfficialLines read={read} />
      <HistoryOf ids={read.ids} asOf={read.test.id} />
      <div className="row not-on-paper">
        <ButtonLink href={`/tests/new?lot=${lot.id}`}>Another test of this lot</ButtonLink>
        {read.recordedIn ? (
          <ButtonLink href={`/history/${read.recordedIn.id}`} kind="quiet">
            Take this test back
          </ButtonLink>
        ) : null}
      </div>
    </div>
  );
}
