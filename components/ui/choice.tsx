import { type FieldProps, fieldId, Refusals } from "./field";
import styles from "./field.module.css";
import type { Option } from "./select";

/** One of a few, all in sight: a group of radio buttons, each with a line of its own and, if need be, a `note`. */
export function Choice({
  name,
  label,
  hint,
  refusals = [],
  value,
  required,
  disabled,
  id = fieldId(name),
  options,
}: FieldProps & { options: readonly (Option & { readonly note?: string })[] }) {
  const hintId = `${id}-hint`;
  const refusalId = `${id}-refusal`;
  const described = [hint ? hintId : "", refusals.length > 0 ? refusalId : ""].filter(Boolean).join(" ");
  return (
    <fieldset
      className={styles.choices}
      id={id}
      tabIndex={-1}
      disabled={disabled}
      aria-describedby={described || undefined}
    >
      <legend>{label}</legend>
      {hint ? (
        <p className={styles.hint} id={hintId}>
          {hint}
        </p>
      ) : null}
      {options.map((option) => (
        <label key={`${option.value}:${value ?? ""}`} className={styles.choice}>
          <input
            type="radio"
            name={name}
            value={option.value}
            defaultChecked={value === option.value}
            required={required}
          />
          <span>{option.words}</span>
          {option.note ? <small>{option.note}</small> : null}
        </label>
      ))}
      <Refusals id={refusalId} refusals={refusals} />
    </fieldset>
  );
}

/** Yes or no to one sentence: a single box to tick. */
export function Tick({
  name,
  label,
  note,
  checked,
  value = "yes",
}: {
  name: string;
  label: string;
  note?: string;
  checked?: boolean;
  value?: string;
}) {
  return (
    <label className={styles.choice} key={String(checked)}>
      <input type="checkbox" name={name} value={value} defaultChecked={checked} />
      <span>{label}</span>
      {note ? <small>{note}</small> : null}
    </label>
  );
}
