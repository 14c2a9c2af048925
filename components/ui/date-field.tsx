import { Field, type FieldProps } from "./field";
import styles from "./field.module.css";

const ways = "1987, 1987-05 or 1987-05-20; about 1991: 1991~; sometime in the eighties: 198X; between: 1987/1991";

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
