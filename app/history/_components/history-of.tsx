import { Section } from "@/components/frame";
import { Way } from "@/components/ui/offered";
import { changeTitle } from "@/lib/display/change-title";
import { dayInWords } from "@/lib/display/dates";
import { counted } from "@/lib/display/plurals";
import { recordHistory } from "@/lib/registry/history/record-history";
import { current } from "../../_session/current";
import { FieldChanges } from "./field-changes";
import styles from "./history-of.module.css";

/**
 * The history of a record: who did what to it and when, each field from what to what, with the reason. `ids`: the record and whatever
 * belongs to it. `asOf`: the record whose state on an earlier day can be looked up.
 */
export async function HistoryOf({ ids, asOf }: { ids: readonly string[]; asOf?: string }) {
  const { db } = await current();
  const { entries, names } = await recordHistory(db, ids);
  if (entries.length === 0) return null;
  return (
    <Section
      id="history"
      title="History"
      aside={
        asOf ? (
          <Way href={`/history/record/${asOf}`}>As it stood on an earlier day</Way>
        ) : (
          counted(entries.length, "change")
        )
      }
    >
      <ol className={styles.entries}>
        {entries.map((entry) => (
          <li key={entry.changeSetId} className={styles.entry}>
            <details>
              <summary>
                <span className={styles.when}>
                  {dayInWords(entry.day)}, {entry.time}
                </span>{" "}
                {changeTitle(entry.title)}, by {entry.actor}
                {entry.reason ? <span className={styles.reason}>: {entry.reason}</span> : null}
              </summary>
              <div className={styles.changes}>
                {entry.changes.slice(0, 30).map((change) => (
                  <div key={change.id}>
                    {entry.changes.length > 1 ? (
                      <p className={styles.record}>
                        {change.noun}
                        {change.name ? ` ${change.name}` : ""}
                      </p>
                    ) : null}
                    <FieldChanges action={change.action} fields={change.fields} names={names} />
                  </div>
                ))}
                <p>
                  <Way href={`/history/${entry.number}`}>The whole change, and the way back</Way>
                </p>
              </div>
            </details>
          </li>
        ))}
      </ol>
    </Section>
  );
}
