import Link from "next/link";
import type { SeasonProgress } from "@/lib/registry/season/progress";
import { progressWords } from "../_words/progress-words";
import styles from "./progress-bars.module.css";

/** How far the season's work has come: a row of seed for each piece, filled as far as it is done, opening to exactly what is left. */
export function ProgressBars({ progress }: { progress: readonly SeasonProgress[] }) {
  return (
    <ul className={styles.bars}>
      {progress
        .filter((each) => each.of > 0)
        .map((each) => {
          const { title, sentence } = progressWords(each);
          const [words, late] = sentence.split("; ");
          return (
            <li key={each.key} className={styles.bar}>
              <span className={styles.title}>{title}</span>
              <svg
                viewBox="0 0 200 10"
                width="200"
                height="10"
                className={styles.drawing}
                aria-hidden="true"
                preserveAspectRatio="none"
              >
                <rect x="0.5" y="0.5" width="199" height="9" rx="4.5" fill="var(--paper)" stroke="var(--unknown)" />
                <rect
                  x="0.5"
                  y="0.5"
                  width={Math.max(0, (199 * each.done) / each.of)}
                  height="9"
                  rx="4.5"
                  fill="var(--counted)"
                />
              </svg>
              <p className={styles.words}>
                {each.left.length > 0 ? <Link href={`/season?left=${each.key}`}>{words}</Link> : words}
                {late ? (
                  <>
                    ;{" "}
                    <Link href={`/season?left=${each.key}&only=overdue`} className="waits">
                      {late}
                    </Link>
                  </>
                ) : null}
              </p>
            </li>
          );
        })}
    </ul>
  );
}
