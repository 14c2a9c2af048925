import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { lastDayOf } from "@/app/history/_words/last-day";
import { PageHead, Section } from "@/components/frame";
import { Button } from "@/components/ui";
import { dayInWords } from "@/lib/display/dates";
import { recordAsOf } from "@/lib/registry/history/record-as-of";
import { current } from "../../../_session/current";
import { HistoryOf } from "../../_components/history-of";
import { fieldWords, valueWords } from "../../_words/field-words";
import styles from "./as-of.module.css";

export const metadata: Metadata = { title: "As it stood" };

export default async function RecordHistory({
  params,
  searchParams,
}: {
  params: Promise<{ id: string }>;
  searchParams: Promise<{ day?: string }>;
}) {
  const { db, today } = await current("history");
  const { id } = await params;
  const asked = (await searchParams).day?.trim() ?? "";
  const day = lastDayOf(asked) ?? today;
  const record = await recordAsOf(db, id, day);
  if (!record) notFound();
  return (
    <div className="sheet stack">
      <PageHead title={`As it stood on ${dayInWords(day)}`} kind={record.noun}>
        <form className={styles.form}>
          <label htmlFor="as-of-day">On which day</label>
          <input
            id="as-of-day"
            name="day"
            defaultValue={asked || day}
            aria-describedby="as-of-hint"
            autoComplete="off"
          />
          <Button type="submit">Look</Button>
          <p id="as-of-hint" className="counts quiet">
            2019, 2019-05 or 2019-05-20; the end of it is meant. It shows what this registry had been told by then.
          </p>
        </form>
        {asked !== "" && lastDayOf(asked) === null ? (
          <p className="waits" role="alert">
            “{asked}” is not a day; write it as 2019, 2019-05 or 2019-05-20.
          </p>
        ) : null}
      </PageHead>
      <Section id="as-of" title="What was written by then">
        {record.state === "stood" ? (
          <dl className="particulars">
            {record.fields.map(({ field, value }) => (
              <div key={field} className={styles.field}>
                <dt>{fieldWords(field)}</dt>
                <dd>{valueWords(field, value, record.names)}</dd>
              </div>
            ))}
          </dl>
        ) : (
          <p>
            {record.state === "not yet" ? "It was not written down yet on that day." : "It had been removed by then."}
          </p>
        )}
      </Section>
      <HistoryOf ids={[id]} />
    </div>
  );
}
