"use client";

import { useEffect, useId, useRef, useState } from "react";
import styles from "./ranked-list.module.css";

/** Asks why a plant is left out; without a reason it is not. */
export function LeaveOut({ tag, leave, cancel }: { tag: string; leave: (reason: string) => void; cancel: () => void }) {
  const id = useId();
  const field = useRef<HTMLInputElement>(null);
  const [refused, setRefused] = useState(false);
  useEffect(() => field.current?.focus(), []);
  const send = () => {
    const reason = (field.current?.value ?? "").replace(/\s+/g, " ").trim();
    if (reason === "") setRefused(true);
    else leave(reason);
  };
  return (
    <div className={styles.asking}>
      <label htmlFor={id}>Why is plant {tag} left out?</label>
      <input
        id={id}
        ref={field}
        className={styles.reason}
        type="text"
        maxLength={200}
        placeholder="lodged, smut, off-type"
        aria-invalid={refused || undefined}
        aria-describedby={refused ? `${id}-refused` : undefined}
        onKeyDown={(event) => {
          if (event.key === "Enter") send();
          if (event.key === "Escape") cancel();
        }}
      />
      {refused ? (
        <p className="waits" id={`${id}-refused`}>
          Nothing stands here; say why, so that it is known next year.
        </p>
      ) : null}
      <span className={styles.both}>
        <button type="button" className={styles.press} onClick={send}>
          Leave it out
        </button>
        <button type="button" className={styles.press} onClick={cancel}>
          Do not
        </button>
      </span>
    </div>
  );
}
