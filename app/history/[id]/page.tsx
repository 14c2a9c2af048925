import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { PageHead, Parts, Section } from "@/components/frame";
import { Way } from "@/components/ui/offered";
import { changeTitle } from "@/lib/display/change-title";
import { dayInWords } from "@/lib/display/dates";
import { counted } from "@/lib/display/plurals";
import { changesOnAPage, readChangeSet } from "@/lib/registry/history/read-change-set";
import { current } from "../../_session/current";
import { FieldChanges } from "../_components/field-changes";
import { TakeBack } from "../_components/take-back";
import { countsInWords, kindWords, undoInWords } from "../_words/change-words";
import styles from "./change-set.module.css";

export const metadata: Metadata = { title: "A change" };

const doneWords = { create: "made", update: "changed", remove: "removed" } as const;

export default async function ChangeSet({
  params,
  searchParams,
}: {
  params: Promise<{ id: string }>;
  searchParams: Promise<{ part?: string }>;
}) {
  const { db } = await current("history");
  const { id } = await params;
  const part = Math.max(1, Math.trunc(Number((await searchParams).part ?? 1)) || 1);
  const set = await readChangeSet(db, id, part - 1);
  if (!set) notFound();
  const parts = Math.ceil(set.total / changesOnAPage);
  return (
    <div className="sheet stack">
      <PageHead title={changeTitle(set.title)} kind={`Change ${set.number}`}>
        <p>
          {dayInWords(set.day)}, {set.time}, by {set.actor} ({kindWords[set.kind] ?? set.kind}):{" "}
          {countsInWords(set.counts)}.
        </p>
        {set.reason ? <p className="told">{set.reason}</p> : null}
        {set.undoes ? (
          <p>
            It takes back <Way href={`/history/${set.undoes.number}`}>{changeTitle(set.undoes.title)}</Way>.
          </p>
        ) : null}
        {set.undoneBy ? (
          <p className="waits">
            It was taken back by <Way href={`/history/${set.undoneBy.number}`}>change {set.undoneBy.number}</Way>.
          </p>
        ) : null}
      </PageHead>
      {set.undoneBy === null && set.kind !== "start" ? (
        <TakeBack changeSetId={set.id} title={changeTitle(set.title)} consequences={undoInWords(set.counts)} />
      ) : null}
      <Section id="records" title="What was written" aside={counted(set.total, "record")}>
        <ol className={styles.records}>
          {set.changes.map((change) => (
            <li key={change.id} className={styles.record}>
              <h3>
                {change.noun}
                {change.name ? ` ${change.name}` : ""} {doneWords[change.action]}
              </h3>
              <FieldChanges action={change.action} fields={change.fields} names={set.names} />
              <p className="counts not-on-paper">
                <Way href={`/history/record/${change.recordId}`}>All that happened to it</Way>
              </p>
            </li>
          ))}
        </ol>
        <Parts part={part} parts={parts} of="the change" href={(each) => `/history/${set.number}?part=${each}`} />
      </Section>
    </div>
  );
}
