import { Way } from "@/components/ui/offered";
import { changeTitle } from "@/lib/display/change-title";
import { dayInWords } from "@/lib/display/dates";
import { grouped } from "@/lib/registry/change-set/grouped";
import type { ChangeSetInList } from "@/lib/registry/history/list-change-sets";
import { countsInWords, undoInWords } from "../_words/change-words";
import styles from "./history-list.module.css";
import { TakeBack } from "./take-back";

/** Change sets under their days, each with what it wrote and the way back. */
export function HistoryList({ sets }: { sets: readonly ChangeSetInList[] }) {
  return (
    <div className={styles.days}>
      {[...grouped(sets, (set) => set.day)].map(([day, own]) => (
        <section key={day} className={styles.day} aria-label={dayInWords(day)}>
          <h2 className={styles.date}>{dayInWords(day)}</h2>
          <ol className={styles.sets}>
            {own.map((set) => (
              <HistoryEntry key={set.id} set={set} />
            ))}
          </ol>
        </section>
      ))}
    </div>
  );
}

function HistoryEntry({ set }: { set: ChangeSetInList }) {
  return (
    <li className={styles.set} data-undone={set.undoneBy !== null || undefined}>
      <span className={styles.time}>{set.time}</span>
      <div>
        <p className={styles.title}>
          <Way href={`/history/${set.number}`}>{changeTitle(set.title)}</Way>
          {set.reason ? <span className="told"> {set.reason}</span> : null}
        </p>
        <p className={styles.what}>
          {countsInWords(set.counts)}, by {set.actor}
          {set.undoneBy === null ? null : (
            <>
              ; <Way href={`/history/${set.undoneBy}`}>taken back by {set.undoneBy}</Way>
            </>
          )}
        </p>
      </div>
      <div className={styles.back}>
        {set.undoneBy === null && set.kind !== "start" ? (
          <TakeBack quiet changeSetId={set.id} title={changeTitle(set.title)} consequences={undoInWords(set.counts)} />
        ) : null}
      </div>
    </li>
  );
}
