import { undoFor } from "@/lib/field/phone";
import styles from "./field.module.css";
import { usePhone, usePhoneNow } from "./phone-context";
import { useClock } from "./use-clock";

/** What was recorded last, and for a minute the way to take it back. Where it could not be stored, why. */
export function UndoLine() {
  const phone = usePhone();
  const { last, rows, notStored } = usePhoneNow();
  const now = useClock(1000);
  if (notStored) {
    return (
      <p className={styles.notStored} role="alert">
        {notStored.sentence}
      </p>
    );
  }
  const left = last === null ? 0 : Math.ceil((last.at + undoFor - now) / 1000);
  const row = rows.find((each) => each.id === last?.id);
  const offered = last !== null && row && left > 0;
  return (
    <div className={styles.undoLine}>
      <p role="status">{offered ? `${last.words}. Stored.` : ""}</p>
      {offered ? (
        <button
          type="button"
          className={styles.undo}
          onClick={() => void phone.undo(row.growOutId, row.id)}
          aria-label={`Take back: ${last.words}`}
        >
          Take back <span className={styles.seconds}>{Math.min(left, 60)}&thinsp;s</span>
        </button>
      ) : null}
    </div>
  );
}
