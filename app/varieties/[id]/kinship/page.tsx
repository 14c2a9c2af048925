import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { PageHead, Section } from "@/components/frame";
import { SimpleTable } from "@/components/tables";
import { Way } from "@/components/ui/offered";
import { dateInWords } from "@/lib/display/dates";
import { counted } from "@/lib/display/plurals";
import { readFounders } from "@/lib/registry/kinships/read-founders";
import { current } from "../../../_session/current";
import { kinshipInWords } from "../../_words/kinship-words";

export const metadata: Metadata = { title: "How its founders are related" };

const columns = [
  { key: "two", name: "Founders" },
  { key: "kin", name: "Related" },
  { key: "how", name: "How that is known" },
] as const;

export default async function KinshipPage({ params }: { params: Promise<{ id: string }> }) {
  const { db } = await current();
  const { id } = await params;
  const read = await readFounders(db, id);
  if (!read) notFound();
  const { variety, founders, kinships, open } = read;
  const at = `/varieties/${id}/kinship`;
  return (
    <div className="sheet stack">
      <PageHead title="How its founders are related" kind={<Link href={`/varieties/${id}`}>{variety.name}</Link>}>
        <p className="measure">
          A founder is a lot whose parents are not on record. Two of one variety may be kin: until somebody writes what
          is known, what descends from both shows a span, from unrelated to as close as the older is to itself.
        </p>
      </PageHead>
      <Section id="known" title="What is known">
        {kinships.length === 0 ? (
          <p className="quiet">Nothing is written yet.</p>
        ) : (
          <SimpleTable
            columns={columns}
            entries
            rows={kinships.map((each) => ({
              id: each.id,
              cells: {
                two: (
                  <>
                    <Link href={`/lots/${each.firstId}`}>{each.first}</Link> and{" "}
                    <Link href={`/lots/${each.secondId}`}>{each.second}</Link>
                  </>
                ),
                kin: (
                  <Way href={`${at}/${each.id}`} otherwise={kinshipInWords(each)}>
                    {kinshipInWords(each)}
                  </Way>
                ),
                how: each.how,
              },
            }))}
          />
        )}
      </Section>
      <Section
        id="open"
        title="What is open"
        aside={founders.length > 1 ? <Way href={`${at}/new`}>write what is known</Way> : null}
      >
        {founders.length < 2 ? (
          <p className="quiet">{counted(founders.length, "founder lot")} on record: there is nothing to relate.</p>
        ) : open.length === 0 ? (
          <p className="quiet">Of every two founders it is written how they are related.</p>
        ) : (
          <ul className="stack-near">
            {open.map(([one, other]) => (
              <li key={`${one.id} ${other.id}`}>
                {one.number}
                {one.year ? `, ${dateInWords(one.year)}` : ""} and {other.number}
                {other.year ? `, ${dateInWords(other.year)}` : ""}:{" "}
                <Way
                  href={`${at}/new?first=${encodeURIComponent(one.number)}&second=${encodeURIComponent(other.number)}`}
                >
                  say how they are related
                </Way>
              </li>
            ))}
          </ul>
        )}
      </Section>
    </div>
  );
}
