"use client";

import { useRef } from "react";
import styles from "./count-sheet.module.css";
import { blockOf } from "./sheet";

/** One cell of the sheet. Coming in marks all of it, so that typing overwrites; Escape puts back what stood there on coming in. */
export function CountCell({
  id,
  label,
  text,
  place,
  wrong,
  describedBy,
  quiet,
  onText,
  onBlock,
}: {
  id: string;
  label: string;
  text: string;
  place: { row: number; replicate: number };
  wrong: boolean;
  describedBy: string;
  quiet: boolean;
  onText: (text: string) => void;
  onBlock: (block: string[][]) => void;
}) {
  const stood = useRef(text);
  return (
    <input
      id={id}
      className={styles.input}
      data-row={place.row}
      data-replicate={place.replicate}
      data-quiet={quiet || undefined}
      aria-label={label}
      aria-invalid={wrong || undefined}
      aria-describedby={wrong ? describedBy : undefined}
      type="text"
      inputMode="numeric"
      autoComplete="off"
      enterKeyHint="next"
      value={text}
      onFocus={(event) => {
        stood.current = text;
        event.target.select();
      }}
      onChange={(event) => onText(event.target.value)}
      onKeyDown={(event) => {
        if (event.key !== "Escape") return;
        onText(stood.current);
        const input = event.currentTarget;
        requestAnimationFrame(() => input.select());
      }}
      onPaste={(event) => {
        const block = blockOf(event.clipboardData.getData("text/plain"));
        if (!block) return;
        event.preventDefault();
        onBlock(block);
      }}
    />
  );
}
