"use client";

import { type ClipboardEvent, type KeyboardEvent, type ReactNode, useEffect, useRef } from "react";
import styles from "./typing.module.css";

/** What a key or a paste in a line asks for. */
export interface LineHands {
  readonly type: (words: string) => void;
  readonly part: (at: number) => void;
  readonly remove: () => void;
  readonly paste: (selection: { from: number; to: number }, text: string) => void;
  readonly go: (way: "up" | "down") => void;
}

/** One line of the notebook: its words as typed, and beside them what was understood. */
export function LineRow({
  id,
  place,
  words,
  hands,
  placeholder,
  children,
}: {
  id: string;
  place: number;
  words: string;
  hands: LineHands;
  placeholder?: string;
  children: ReactNode;
}) {
  const area = useRef<HTMLTextAreaElement>(null);
  // As high as its words, also where the browser does not do it by itself.
  // biome-ignore lint/correctness/useExhaustiveDependencies: the height follows the words
  useEffect(() => {
    const element = area.current;
    if (!element || CSS.supports("field-sizing", "content")) return;
    element.style.blockSize = "auto";
    element.style.blockSize = `${element.scrollHeight}px`;
  }, [words]);
  const keys = (event: KeyboardEvent<HTMLTextAreaElement>) => {
    if (event.nativeEvent.isComposing) return;
    const element = event.currentTarget;
    const { selectionStart, selectionEnd, value } = element;
    if (event.key === "Enter") {
      event.preventDefault();
      hands.part(selectionEnd);
    } else if (event.key === "Backspace" && value === "") {
      event.preventDefault();
      hands.remove();
    } else if (event.key === "ArrowUp" && (onOneLine(element) || selectionStart === 0)) {
      event.preventDefault();
      hands.go("up");
    } else if (event.key === "ArrowDown" && (onOneLine(element) || selectionStart === value.length)) {
      event.preventDefault();
      hands.go("down");
    }
  };
  const paste = (event: ClipboardEvent<HTMLTextAreaElement>) => {
    const text = event.clipboardData.getData("text/plain");
    if (!/[\r\n]/.test(text.trim())) return;
    event.preventDefault();
    const { selectionStart, selectionEnd } = event.currentTarget;
    hands.paste({ from: selectionStart, to: selectionEnd }, text);
  };
  return (
    <li className={styles.row}>
      <label className={styles.place} htmlFor={`line-${id}`}>
        <span className="heard">Line </span>
        {place + 1}
      </label>
      <textarea
        ref={area}
        id={`line-${id}`}
        className={styles.words}
        rows={1}
        value={words}
        placeholder={placeholder}
        autoComplete="off"
        enterKeyHint="enter"
        onChange={(event) => hands.type(event.target.value.replace(/[\r\n]+/g, " "))}
        onKeyDown={keys}
        onPaste={paste}
      />
      {children}
    </li>
  );
}

function onOneLine(element: HTMLTextAreaElement): boolean {
  const line = Number.parseFloat(getComputedStyle(element).lineHeight);
  return Number.isFinite(line) && element.scrollHeight < line * 2.4;
}
