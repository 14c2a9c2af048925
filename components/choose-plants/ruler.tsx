"use client";

import { type ReactNode, useId } from "react";
import styles from "./ruler.module.css";

/**
 * A whole number between two ends: pulled along, moved with the arrow keys, or typed beside. What is typed outside the ends is brought to the nearer one when the
 * field is left. `note` stands below and belongs to it for the ear.
 */
export function Ruler({
  label,
  value,
  least,
  most,
  set,
  unit,
  note,
  spoken,
  large = false,
}: {
  label: ReactNode;
  value: number;
  least: number;
  most: number;
  set: (value: number) => void;
  unit?: string;
  note?: ReactNode;
  /** how the value is read aloud, where the bare number would say too little */
  spoken?: string;
  large?: boolean;
}) {
  const id = useId();
  return (
    <div className={styles.ruler} data-large={large || undefined}>
      <label className={styles.label} htmlFor={id}>
        {label}
      </label>
      <input
        id={id}
        className={styles.track}
        type="range"
        min={least}
        max={most}
        step={1}
        value={value}
        aria-describedby={note ? `${id}-note` : undefined}
        aria-valuetext={spoken}
        onChange={(event) => set(Number(event.target.value))}
      />
      <span className={styles.beside}>
        <input
          className={styles.typed}
          type="number"
          inputMode="numeric"
          min={least}
          max={most}
          step={1}
          value={value}
          aria-labelledby={`${id}-typed`}
          onChange={(event) => {
            const typed = event.target.valueAsNumber;
            if (Number.isInteger(typed) && typed >= least && typed <= most) set(typed);
          }}
          onBlur={(event) => {
            const typed = Math.round(event.target.valueAsNumber);
            if (Number.isFinite(typed)) set(Math.min(most, Math.max(least, typed)));
          }}
        />
        <span className="heard" id={`${id}-typed`}>
          {label}, as a number
        </span>
        {unit ? <span className={styles.unit}>{unit}</span> : null}
      </span>
      {note ? (
        <p className={styles.note} id={`${id}-note`}>
          {note}
        </p>
      ) : null}
    </div>
  );
}
