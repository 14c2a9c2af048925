import type { Assumption } from "@/lib/science/outcome";
import styles from "./counts.module.css";

/** What was noted of a record, who made it, and what looks odd about it for as long as it does. */
export function OddNotes({
  words,
  who,
  odd = [],
}: {
  words: readonly (string | null)[];
  who: string | null;
  odd?: readonly Assumption[];
}) {
  return (
    <>
      {[...words, who].filter(Boolean).join(", ")}
      {odd.map(({ code, text }) => (
        <span key={code} className={styles.odd}>
          {text}
        </span>
      ))}
    </>
  );
}
