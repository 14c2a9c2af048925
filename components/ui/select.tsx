import { Field, type FieldProps } from "./field";
import styles from "./field.module.css";

export interface Option {
  readonly value: string;
  readonly words: string;
}

/** One of many. `empty` is the wording of no answer ("not known"); without it the first option stands. */
export function Select({
  value,
  options,
  empty,
  ...field
}: FieldProps & { options: readonly Option[]; empty?: string }) {
  return (
    <Field {...field}>
      {(control) => (
        // the key makes the control take a new value from the server after a form was sent
        <select key={value ?? ""} {...control} className={styles.control} defaultValue={value ?? ""}>
          {empty === undefined ? null : <option value="">{empty}</option>}
          {options.map((option) => (
            <option key={option.value} value={option.value}>
              {option.words}
            </option>
          ))}
        </select>
      )}
    </Field>
  );
}
