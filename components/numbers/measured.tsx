import type { Grade } from "@/components/doubt/grade";
import styles from "./measured.module.css";

/**
 * A value with its unit and its doubt, on a line of text or in a cell: "64 %" with its `span` "49–77 %" behind it. The value
 * is already worded (lib/display); null is "unknown". assumed: hatched below; unknown: open.
 */
export function Measured({
  value,
  span,
  grade = "counted",
}: {
  value: string | null;
  span?: string | null;
  grade?: Grade;
}) {
  const shown: Grade = value === null && !span ? "unknown" : grade;
  return (
    <span className={styles.measured}>
      {value === null && span ? null : (
        <span className={styles[shown]}>
          {value ?? "unknown"}
          {shown === "assumed" ? <span className="heard"> (assumed)</span> : null}
        </span>
      )}
      {span ? (
        <span className={value === null ? styles[shown] : styles.span}>
          {value === null ? null : <span className="heard"> between </span>}
          {span}
        </span>
      ) : null}
    </span>
  );
}
