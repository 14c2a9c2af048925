import type { ReactNode } from "react";
import type { Explanation } from "@/lib/display/explanation";
import { Explained } from "./explained";
import styles from "./figure.module.css";

/**
 * One figure and its sentence, for the head of a page: `value` large ("64–88 %", or "unknown"), `children` the sentence that
 * says what it means for the hand (words only, no block). With an `explanation` both open to it. `waiting` marks it as
 * waiting for a hand.
 */
export function Figure({
  value,
  children,
  explanation,
  waiting = false,
}: {
  value: ReactNode;
  children: ReactNode;
  explanation?: Explanation;
  waiting?: boolean;
}) {
  const both = (
    <>
      <span className={styles.value} data-waiting={waiting || undefined}>
        {value}
      </span>
      <span className={styles.sentence}>{children}</span>
    </>
  );
  return explanation ? <Explained explanation={explanation}>{both}</Explained> : <p className={styles.line}>{both}</p>;
}
