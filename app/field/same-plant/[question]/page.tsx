import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { PageHead, Section } from "@/components/frame";
import { Icon } from "@/components/icons/icon";
import { SimpleTable } from "@/components/tables";
import { Offered } from "@/components/ui/offered";
import { dateInWords } from "@/lib/display/dates";
import { type PlantAsked, readSamePlant } from "@/lib/registry/field/read-same-plant";
import { current } from "../../../_session/current";
import { PlantAloneForm, SamePlantForm } from "../../_desk/settle-forms";

export const metadata: Metadata = { title: "One plant, or two" };

/** Two records that may be one plant, beside each other. */
export default async function SamePlant({ params }: { params: Promise<{ question: string }> }) {
  const { db } = await current("correct-in-field");
  const read = await readSamePlant(db, (await params).question);
  if (!read) notFound();
  const { lead, other, growOut } = read;
  const home = `/field/came-home?growOut=${growOut.id}`;
  return (
    <div className="sheet stack">
      <PageHead
        title="One plant, or two"
        kind={<Link href={home}>From the field, grow-out {growOut.name}</Link>}
        mark={<Icon name="page-in" size={32} />}
      >
        <p className="lead measure">{read.sentence}</p>
      </PageHead>
      <Section id="both" title="Both records">
        <SimpleTable
          entries
          columns={[
            { key: "plant", name: "Plant" },
            { key: "place", name: "Where it stands" },
            { key: "marks", name: "Marks" },
            { key: "scores", name: "Scores", kind: "count" },
          ]}
          rows={[lead, other].map((plant) => ({
            id: plant.id,
            cells: {
              plant: plant.name,
              place: plant.place || "not written",
              marks: marksOf(plant),
              scores: plant.scores,
            },
          }))}
        />
      </Section>
      {read.answer === null ? (
        <Section id="answer" title="What do you say?">
          <Offered deed="correct-in-field" otherwise={<p>Whose grow-out it is says so, or the owner.</p>}>
            <SamePlantForm questionId={read.id} lead={lead.name} other={other.name} back={home} />
          </Offered>
        </Section>
      ) : (
        <Section id="answered" title={read.one ? "They are read as one plant" : "They are two plants"}>
          <div className="stack">
            <p className="told">{read.answer}</p>
            {read.one ? (
              <Offered deed="correct-in-field">
                <PlantAloneForm plantId={other.id} name={other.name} back={home} />
              </Offered>
            ) : null}
          </div>
        </Section>
      )}
    </div>
  );
}

function marksOf({ marks }: PlantAsked) {
  if (marks.length === 0) return "none";
  return marks.map(({ id, on, words, by }) => (
    <div key={id}>
      {dateInWords(on)}: {by ? `${words}; ${by}` : words}
    </div>
  ));
}
