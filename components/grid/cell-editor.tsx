"use client";

import { type KeyboardEvent, useEffect, useRef } from "react";
import styles from "./grid.module.css";

/** Where the focus goes when a cell was written: a cell down, up, on or back, or it stays. */
export type AfterEdit = "down" | "up" | "on" | "back" | "right" | "left" | "stay";

/**
 * The field of a cell that is being edited. `over`: begun by typing, so the arrow keys write and go on; else (F2, double click, a tap)
 * they move in the text. Escape takes the edit back.
 */
export function CellEditor({
  text,
  over,
  label,
  inputMode,
  onText,
  commit,
  cancel,
}: {
  text: string;
  over: boolean;
  label: string;
  inputMode: "text" | "numeric" | "decimal";
  onText: (text: string) => void;
  commit: (after: AfterEdit) => void;
  cancel: () => void;
}) {
  const field = useRef<HTMLInputElement>(null);
  // A field that goes loses the focus too: what was decided by a key is not decided again.
  const decided = useRef(false);
  useEffect(() => {
    const input = field.current;
    input?.focus();
    input?.setSelectionRange(input.value.length, input.value.length);
  }, []);
  const keys = (event: KeyboardEvent<HTMLInputElement>) => {
    event.stopPropagation();
    if (event.nativeEvent.isComposing) return;
    const after = afterKey(event, over);
    if (after === null) return;
    event.preventDefault();
    decided.current = true;
    if (after === "cancel") cancel();
    else commit(after);
  };
  return (
    <input
      ref={field}
      className={styles.editor}
      value={text}
      aria-label={label}
      inputMode={inputMode}
      autoComplete="off"
      spellCheck={false}
      enterKeyHint="next"
      onChange={(event) => onText(event.target.value)}
      onKeyDown={keys}
      onCopy={(event) => event.stopPropagation()}
      onCut={(event) => event.stopPropagation()}
      onPaste={(event) => event.stopPropagation()}
      onBlur={() => {
        if (!decided.current) commit("stay");
      }}
    />
  );
}

function afterKey({ key, shiftKey }: KeyboardEvent, over: boolean): AfterEdit | "cancel" | null {
  if (key === "Escape") return "cancel";
  if (key === "Enter") return shiftKey ? "up" : "down";
  if (key === "Tab") return shiftKey ? "back" : "on";
  if (!over) return null;
  const arrows = { ArrowDown: "down", ArrowUp: "up", ArrowRight: "right", ArrowLeft: "left" } as const;
  return arrows[key as keyof typeof arrows] ?? null;
}
