import Link from "next/link";
import type { FoundLine } from "../_words/found-words";
import styles from "./found-list.module.css";

const nouns: Readonly<Record<FoundLine["kind"], string>> = {
  variety: "variety",
  lot: "lot",
  "grow-out": "grow-out",
  test: "test",
  steward: "steward",
  story: "story",
  note: "note",
};

/** Finds, best first: the name, what it is, and the words in which it was found. */
export function FoundList({ lines }: { lines: readonly FoundLine[] }) {
  return (
    <ol className={styles.list}>
      {lines.map((line) => (
        <li key={line.key} className={styles.line}>
          <span className={styles.kind}>{nouns[line.kind]}</span>
          <div>
            <Link href={line.href} className={styles.title}>
              {line.title}
            </Link>
            {line.of ? <span className={styles.of}> {line.of}</span> : null}
            {line.found ? <p className={styles.found}>{line.found}</p> : null}
          </div>
        </li>
      ))}
    </ol>
  );
}
