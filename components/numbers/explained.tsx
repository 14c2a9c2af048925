import type { ReactNode } from "react";
import type { Explanation } from "@/lib/display/explanation";
import styles from "./explained.module.css";
import { ExplanationBody } from "./explanation-body";

/**
 * A computed figure that opens to how it came about. `children` is the figure as it stands on the page (a word or two, a
 * Measured). It is a block; in a table cell or on a line of text use ExplainedHere. On paper it is always open;
 * `brief`: there without its inputs, which stand in the table above it.
 */
export function Explained({
  explanation,
  children,
  brief = false,
}: {
  explanation: Explanation;
  children: ReactNode;
  brief?: boolean;
}) {
  return (
    <details className={styles.explained}>
      <summary className={styles.summary}>
        {children}
        <span className={styles.cue}>
          how<span className="heard"> {explanation.title} is worked out</span>
        </span>
      </summary>
      <ExplanationBody explanation={explanation} brief={brief} />
    </details>
  );
}
