import { Field, type FieldProps } from "./field";
import styles from "./field.module.css";

const ways = "1987, June 1994 or 20 May 1987; about 1960; the early eighties; between 1987 and 1991";

/** A date as sharp or as vague as it is known (EDTF), typed as text and never rounded to a day. */
export function DateField({ value, hint = ways, ...field }: FieldProps) {
  return (
    <Field {...field} hint={hint}>
      {(control) => (
        <input
          {...control}
          className={`${styles.control} ${styles.date}`}
          type="text"
          defaultValue={value ?? ""}
          autoComplete="off"
          spellCheck={false}
        />
      )}
    </Field>
  );
}
