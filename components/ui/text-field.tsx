import { Field, type FieldProps } from "./field";
import styles from "./field.module.css";

/** Words on one line, or on several where `lines` is given. */
export function TextField({
  value,
  lines,
  placeholder,
  autoComplete = "off",
  type = "text",
  ...field
}: FieldProps & {
  lines?: number;
  placeholder?: string;
  autoComplete?: string;
  type?: "text" | "email" | "password" | "search" | "url";
}) {
  return (
    <Field {...field}>
      {(control) =>
        lines === undefined ? (
          <input
            {...control}
            className={styles.control}
            type={type}
            defaultValue={value ?? ""}
            placeholder={placeholder}
            autoComplete={autoComplete}
          />
        ) : (
          <textarea
            {...control}
            className={styles.control}
            rows={lines}
            defaultValue={value ?? ""}
            placeholder={placeholder}
          />
        )
      }
    </Field>
  );
}
