import { useId } from "react";
import { wholeNumber } from "@/lib/display/numbers";
import styles from "./progress.module.css";

/** How far a long step has come, always with its number: "1,240 of 100,000 lines". `of` null: not known yet. */
export function Progress({ label, done, of, unit }: { label: string; done: number; of: number | null; unit: string }) {
  const id = useId();
  const words =
    of === null ? `${wholeNumber(done)} ${unit} so far` : `${wholeNumber(done)} of ${wholeNumber(of)} ${unit}`;
  return (
    <div className={styles.progress}>
      <label htmlFor={id}>{label}</label>
      <progress id={id} value={of === null ? undefined : done} max={of ?? undefined} />
      <span className={styles.count} aria-live="polite">
        {words}
      </span>
    </div>
  );
}
