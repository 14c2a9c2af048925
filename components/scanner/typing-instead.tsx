"use client";

import { type FormEvent, useId, useState } from "react";
import { Button } from "@/components/ui/button";
import styles from "./scanner.module.css";

export interface Typing {
  /** "Tag, as it is written" */
  readonly label: string;
  /** what the button does: "Take this tag" */
  readonly button: string;
  /** takes what was typed, never empty; answers the sentence of a refusal, or null */
  readonly onTyped: (text: string) => string | null;
}

/** A field for what stands beside a code, for mud, dark and a phone without camera. */
export function TypingInstead({ label, button, onTyped }: Typing) {
  const [text, setText] = useState("");
  const [wrong, setWrong] = useState<string | null>(null);
  const id = useId();
  const send = (event: FormEvent) => {
    event.preventDefault();
    event.stopPropagation();
    if (text.trim() === "") return;
    const refused = onTyped(text.trim());
    setWrong(refused);
    if (refused === null) setText("");
  };
  return (
    <form className={styles.typing} onSubmit={send}>
      <label htmlFor={id}>{label}</label>
      <div className={styles.typed}>
        <input
          id={id}
          value={text}
          autoComplete="off"
          autoCapitalize="characters"
          spellCheck={false}
          aria-invalid={wrong !== null || undefined}
          aria-describedby={wrong === null ? undefined : `${id}-wrong`}
          onChange={(event) => setText(event.target.value)}
        />
        <Button type="submit">{button}</Button>
      </div>
      {wrong === null ? null : (
        <p id={`${id}-wrong`} className={styles.says}>
          {wrong}
        </p>
      )}
    </form>
  );
}
