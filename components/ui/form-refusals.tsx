"use client";

import { useEffect, useRef } from "react";
import { counted } from "@/lib/display/plurals";
import { fieldId } from "./field";
import styles from "./notice.module.css";

/** A refusal for the summary: the sentence, and the `name` of the field it is about, if it is about one. */
export interface FormRefusal {
  readonly sentence: string;
  readonly name?: string;
  readonly label?: string;
}

/** The summary at the head of a form that was refused; takes the focus, so that it is heard and seen first. `title` where nothing was to be stored. */
export function FormRefusals({
  refusals,
  title = "Nothing was stored yet",
}: {
  refusals: readonly FormRefusal[];
  title?: string;
}) {
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (refusals.length > 0) box.current?.focus();
  }, [refusals]);
  if (refusals.length === 0) return null;
  return (
    <div className={`${styles.notice} ${styles.waiting}`} role="alert" tabIndex={-1} ref={box}>
      <p className={styles.title}>
        {title}: {counted(refusals.length, "thing")} to put right
      </p>
      <ul className={styles.list}>
        {refusals.map((refusal) => (
          <li key={`${refusal.name ?? ""}:${refusal.sentence}`}>
            {refusal.name ? <a href={`#${fieldId(refusal.name)}`}>{refusal.label ?? refusal.sentence}</a> : null}
            {refusal.name && refusal.label ? ": " : null}
            {refusal.name && !refusal.label ? null : refusal.sentence}
          </li>
        ))}
      </ul>
    </div>
  );
}
