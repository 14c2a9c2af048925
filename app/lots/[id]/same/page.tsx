import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { Section } from "@/components/frame";
import type { SearchParameters } from "@/components/tables";
import { Button, Notice, TextField } from "@/components/ui";
import { Way } from "@/components/ui/offered";
import { dayInWords } from "@/lib/display/dates";
import { weight } from "@/lib/display/units";
import { readHead } from "@/lib/registry/lots/read-head";
import { readMerge } from "@/lib/registry/lots/read-merge";
import { type MergedRead, readMerged } from "@/lib/registry/lots/read-merged";
import { current } from "../../../_session/current";
import { LotPageHead } from "../../_parts/lot-page-head";
import { unitsOf } from "../../_words/units-of";
import { MergeForm, StandAloneForm, TwoLotsForm } from "./same-forms";
import { TwoRecords } from "./two-records";

export const metadata: Metadata = { title: "One lot, or two" };

/** Two records of one lot: what would come together, and taking it back. */
export default async function SameLot({
  params,
  searchParams,
}: {
  params: Promise<{ id: string }>;
  searchParams: Promise<SearchParameters>;
}) {
  const { db, settings } = await current("correct");
  const { id } = await params;
  const lot = await readHead(db.read, id);
  if (!lot) notFound();
  const { other, record } = await searchParams;
  const merged = typeof record === "string" ? await readMerged(db, record) : null;
  if (merged) {
    return (
      <div className="sheet stack">
        <LotPageHead lot={lot} title={`Let ${merged.record.number} stand for itself again`}>
          {saidInWords(merged)}
        </LotPageHead>
        <Since merged={merged} />
        <p className="measure">
          By its own entries {merged.record.number} then holds {grams(merged.grams.record)}, and {merged.leading.number}{" "}
          {grams(merged.grams.leading)}.
        </p>
        <StandAloneForm recordId={merged.record.id} back={`/lots/${lot.id}`} />
      </div>
    );
  }
  const named = typeof other === "string" ? other.trim() : "";
  const read = named === "" ? null : await readMerge(db, lot.id, named);
  const two = read && { lotId: lot.id, number: lot.number, otherId: read.other.id, other: read.other.number };
  return (
    <div className="sheet stack">
      <LotPageHead lot={lot} title="One lot, entered twice">
        Where one lot stands here under two numbers, the two records are read as one: lists show one, ledgers, tests and
        offspring are counted together, and both numbers and both labels lead to it.
      </LotPageHead>
      <form method="get" className="stack not-on-paper">
        <TextField
          name="other"
          label="The other record"
          hint="its lot number, or the code of its label"
          required
          value={named}
          refusals={
            named !== "" && !read ? ["is no lot of this registry; write a number as it stands in the list"] : []
          }
        />
        <Button type="submit">Look at both</Button>
      </form>
      {read && two ? (
        <>
          <Section id="both" title={`${read.one.number} and ${read.other.number}`}>
            <TwoRecords read={read} units={unitsOf(settings)} />
          </Section>
          {read.faults.length > 0 ? (
            <Notice title="They cannot be one lot">
              {read.faults.map((fault) => (
                <p key={fault.code}>{fault.sentence}.</p>
              ))}
            </Notice>
          ) : (
            <>
              <Section id="one" title="They are one">
                <MergeForm {...two} parentageDiffers={read.parentageDiffers} />
              </Section>
              <Section id="two" title="They are two">
                <TwoLotsForm {...two} />
              </Section>
            </>
          )}
        </>
      ) : null}
    </div>
  );

  function grams(value: number | null): string {
    return value === null ? "an amount that nobody knows" : weight(value, unitsOf(settings));
  }
}

function saidInWords({ record, leading, said }: MergedRead): string {
  const who = said
    ? ` ${said.actor} said so ${dayInWords(said.at.slice(0, 10))}${said.reason ? `: ${said.reason}` : ""}.`
    : "";
  return `${record.number} is read as lot ${leading.number}.${who}`;
}

/** What was written of either since the two were said to be one. */
function Since({ merged }: { merged: MergedRead }) {
  if (merged.since.length === 0) return <p>Nothing was written of either since.</p>;
  return (
    <Section id="since" title="Written since">
      <ul className="stack-near">
        {merged.since.map(({ number, at, title }) => (
          <li key={number}>
            {dayInWords(at.slice(0, 10))}: <Way href={`/history/${number}`}>{title}</Way>
          </li>
        ))}
      </ul>
    </Section>
  );
}
