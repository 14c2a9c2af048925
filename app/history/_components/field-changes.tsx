import type { FieldChange } from "@/lib/registry/history/fields-changed";
import { fieldWords, valueWords } from "../_words/field-words";
import styles from "./field-changes.module.css";

/** Each field from what to what; of a record that was made, what was written in it. */
export function FieldChanges({
  action,
  fields,
  names,
}: {
  action: "create" | "update" | "remove";
  fields: readonly FieldChange[];
  names: ReadonlyMap<string, string>;
}) {
  return (
    <dl className={styles.fields}>
      {fields.map(({ field, from, to }) => (
        <div key={field} className={styles.field}>
          <dt>{fieldWords(field)}</dt>
          <dd>
            {action === "create" ? null : (
              <>
                <del className={styles.from}>{valueWords(field, from, names)}</del>
                {action === "update" ? <span className="heard"> became </span> : null}
              </>
            )}
            {action === "remove" ? null : <ins className={styles.to}>{valueWords(field, to, names)}</ins>}
          </dd>
        </div>
      ))}
    </dl>
  );
}
