"use client";

import { type ReactNode, useEffect, useId, useRef, useState } from "react";
import type { Explanation } from "@/lib/display/explanation";
import styles from "./explained.module.css";
import { ExplanationBody } from "./explanation-body";

/**
 * The same as Explained for a table cell or a line of text: the figure is a button that opens its explanation over the page. A table has hundreds,
 * and few are opened: until then the page carries its answer and formula alone.
 */
export function ExplainedHere({ explanation, children }: { explanation: Explanation; children: ReactNode }) {
  const id = useId();
  const over = useRef<HTMLSpanElement>(null);
  const [opened, setOpened] = useState(false);
  // It may have been opened before this page came alive.
  useEffect(() => {
    if (over.current?.matches(":popover-open")) setOpened(true);
  }, []);
  return (
    <>
      <button type="button" className={styles.opener} popoverTarget={id}>
        {children}
        <span className="heard">, how {explanation.title} is worked out</span>
      </button>
      <span
        ref={over}
        className={styles.over}
        id={id}
        popover="auto"
        role="dialog"
        aria-label={explanation.title}
        onBeforeToggle={() => setOpened(true)}
      >
        {opened ? (
          <ExplanationBody explanation={explanation} />
        ) : (
          <>
            {explanation.answer} · {explanation.formula}
          </>
        )}
        <button type="button" className={styles.close} popoverTarget={id} popoverTargetAction="hide">
          Close
        </button>
      </span>
    </>
  );
}
