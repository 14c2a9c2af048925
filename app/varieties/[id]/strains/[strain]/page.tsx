import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { PageHead, Section } from "@/components/frame";
import { dateInWords } from "@/lib/display/dates";
import { listStewards } from "@/lib/registry/stewards/list-stewards";
import { readStrain } from "@/lib/registry/varieties/read-strain";
import { current } from "../../../../_session/current";
import { HistoryOf } from "../../../../history/_components/history-of";
import { storeStrainCorrection } from "../../../_actions/correct";
import type { FieldSpec } from "../../../_forms/field-spec";
import { RecordForm } from "../../../_forms/record-form";
import { additionFields } from "../../../_words/additions";
import { relationInWords } from "../../../_words/strain-words";

export const metadata: Metadata = { title: "A strain" };

export default async function StrainPage({ params }: { params: Promise<{ id: string; strain: string }> }) {
  const { db } = await current("correct");
  const { id, strain: strainId } = await params;
  const strain = await readStrain(db, strainId);
  if (!strain || strain.varietyId !== id) notFound();
  const people = (await listStewards(db)).flatMap((each) => each.name ?? []);
  const { lots, keeper, ...said } = strain;
  const stored: Readonly<Record<string, string | null>> = { ...said, steward: keeper };
  const fields: readonly FieldSpec[] = [
    ...additionFields("strain", { people, lots: [] }).map((field) =>
      field.kind === "hidden" ? field : { ...field, value: stored[field.name] },
    ),
    { kind: "words", name: "reason", label: "Why it is put right", required: true, hint: "Both stay in the history" },
  ];
  return (
    <div className="sheet stack">
      <PageHead title={strain.name} kind={<Link href={`/varieties/${id}#strains`}>{strain.variety}</Link>}>
        <p className="measure">
          A strain{keeper ? ` kept by ${keeper}` : ""}: {relationInWords(strain.relation)}.
          {strain.difference ? ` What is said to be different: ${withoutStop(strain.difference)}.` : ""}
        </p>
      </PageHead>
      <Section id="lots" title="Its lots">
        {lots.length === 0 ? (
          <p className="quiet">No lot is said to be of it.</p>
        ) : (
          <ul className="stack-near">
            {lots.map((lot) => (
              <li key={lot.id}>
                <Link href={`/lots/${lot.id}`}>{lot.number}</Link>
                {lot.year ? `, ${dateInWords(lot.year)}` : ""}
              </li>
            ))}
          </ul>
        )}
      </Section>
      <Section id="correct" title="Put it right">
        <RecordForm
          fields={fields}
          action={storeStrainCorrection.bind(null, strainId)}
          confirm="Store the correction"
          back={{ href: `/varieties/${id}#strains`, words: "Leave it as it is" }}
        />
      </Section>
      <HistoryOf ids={[strainId]} />
    </div>
  );
}

/** Words as somebody wrote them, as a part of a sentence of ours. */
function withoutStop(words: string): string {
  return words.trim().replace(/\.$/, "");
}
