"use client";

import { type ReactNode, useId } from "react";
import type { Explanation } from "@/lib/display/explanation";
import styles from "./explained.module.css";
import { ExplanationBody } from "./explanation-body";

/** The same as Explained for a table cell or a line of text: the figure is a button that opens its explanation over the page. */
export function ExplainedHere({ explanation, children }: { explanation: Explanation; children: ReactNode }) {
  const id = useId();
  return (
    <>
      <button type="button" className={styles.opener} popoverTarget={id}>
        {children}
        <span className="heard">, how {explanation.title} is worked out</span>
      </button>
      <span className={styles.over} id={id} popover="auto" role="dialog" aria-label={explanation.title}>
        <ExplanationBody explanation={explanation} />
        <button type="button" className={styles.close} popoverTarget={id} popoverTargetAction="hide">
          Close
        </button>
      </span>
    </>
  );
}
