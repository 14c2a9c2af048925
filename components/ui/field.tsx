import type { ReactNode } from "react";
import styles from "./field.module.css";

/** What every field takes: its name in the form, its label, help, the refusals under it, and what was typed. */
export interface FieldProps {
  readonly name: string;
  readonly label: ReactNode;
  readonly hint?: ReactNode;
  /** sentences of refusal for this field */
  readonly refusals?: readonly string[];
  /** what stands in the field: the stored value, or what was typed before a refusal */
  readonly value?: string | null;
  readonly required?: boolean;
  readonly disabled?: boolean;
  readonly id?: string;
}

/** The attributes that tie a control to its label, hint and refusals. */
export interface ControlAttributes {
  readonly id: string;
  readonly name: string;
  readonly required: boolean | undefined;
  readonly disabled: boolean | undefined;
  readonly "aria-describedby": string | undefined;
  readonly "aria-invalid": true | undefined;
}

/** The id of a field's control; a refusal summary links to it. */
export function fieldId(name: string): string {
  return `field-${name}`;
}

/** Label, control, hint and refusals in their order. `children` draws the control from its attributes. */
export function Field({
  name,
  label,
  hint,
  refusals = [],
  required,
  disabled,
  id = fieldId(name),
  children,
}: Omit<FieldProps, "value"> & { children: (control: ControlAttributes) => ReactNode }) {
  const hintId = `${id}-hint`;
  const refusalId = `${id}-refusal`;
  const described = [hint ? hintId : "", refusals.length > 0 ? refusalId : ""].filter(Boolean).join(" ");
  return (
    <div className={styles.field} data-refused={refusals.length > 0 || undefined}>
      <label className={styles.label} htmlFor={id}>
        {label}
        {required ? null : <span className={styles.optional}> (if known)</span>}
      </label>
      {hint ? (
        <p className={styles.hint} id={hintId}>
          {hint}
        </p>
      ) : null}
      {children({
        id,
        name,
        required,
        disabled,
        "aria-describedby": described || undefined,
        "aria-invalid": refusals.length > 0 || undefined,
      })}
      <Refusals id={refusalId} refusals={refusals} />
    </div>
  );
}

/** The refusals of one field, one sentence each. */
export function Refusals({ id, refusals }: { id: string; refusals: readonly string[] }) {
  if (refusals.length === 0) return null;
  return (
    <div className={styles.refusal} id={id}>
      {refusals.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
    </div>
  );
}
