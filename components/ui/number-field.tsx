import type { ReactNode } from "react";
import { Field, type FieldProps } from "./field";
import styles from "./field.module.css";

/**
 * A count or a measure with its unit behind it. It is a text control on purpose: what was typed ("12,5", "about 40")
 * goes to the server as it stands and comes back as it stands, and no wheel turns it.
 */
export function NumberField({ value, unit, whole, ...field }: FieldProps & { unit?: ReactNode; whole?: boolean }) {
  return (
    <Field {...field}>
      {(control) => (
        <span className={styles.count}>
          <input
            {...control}
            className={styles.control}
            type="text"
            inputMode={whole ? "numeric" : "decimal"}
            defaultValue={value ?? ""}
            autoComplete="off"
          />
          {unit ? <span className={styles.unit}>{unit}</span> : null}
        </span>
      )}
    </Field>
  );
}
