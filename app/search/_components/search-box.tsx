"use client";

import Link from "next/link";
import { useRouter } from "next/navigation";
import { useEffect, useId, useRef, useState } from "react";
import { Button } from "@/components/ui";
import type { FoundLine } from "../_words/found-words";
import styles from "./search-box.module.css";

const pause = 120;

/** The box of the search page: finds as one types, all of them with Enter. Without script it is a plain form. */
export function SearchBox({ written }: { written: string }) {
  const router = useRouter();
  const id = useId();
  const [text, setText] = useState(written);
  const [near, setNear] = useState<{
    readonly of: string;
    readonly total: number;
    readonly lines: readonly FoundLine[];
  } | null>(null);
  const asked = useRef(written);
  useEffect(() => {
    if (text === asked.current || text.trim() === "") return;
    const stop = new AbortController();
    const timer = setTimeout(async () => {
      try {
        const answer = await fetch(`/search/quick?q=${encodeURIComponent(text)}`, { signal: stop.signal });
        if (answer.ok) setNear({ of: text, ...(await answer.json()) });
      } catch {
        // typed on, or no answer: the plain form still works
      }
    }, pause);
    return () => {
      clearTimeout(timer);
      stop.abort();
    };
  }, [text]);
  const shown = near && text.trim() !== "" && text !== written ? near : null;
  return (
    <search className={styles.search}>
      <form
        action="/search"
        className={styles.form}
        onSubmit={(event) => {
          event.preventDefault();
          router.push(`/search?q=${encodeURIComponent(text)}`);
        }}
      >
        <label htmlFor={id}>Name, number, code or words</label>
        <div className={styles.line}>
          <input
            id={id}
            name="q"
            type="search"
            value={text}
            autoComplete="off"
            autoCapitalize="off"
            spellCheck={false}
            onChange={(event) => setText(event.target.value)}
          />
          <Button type="submit">Search</Button>
        </div>
      </form>
      <div role="status" className="heard">
        {shown ? `${shown.total} found` : ""}
      </div>
      {shown ? (
        <ul className={styles.near} aria-label="Found as you type">
          {shown.lines.map((line) => (
            <li key={line.key}>
              <Link href={line.href}>{line.title}</Link>{" "}
              <span className={styles.of}>{[line.kind, line.of].filter(Boolean).join(", ")}</span>
            </li>
          ))}
          {shown.lines.length === 0 ? <li className={styles.of}>nothing yet</li> : null}
          {shown.total > shown.lines.length ? (
            <li className={styles.of}>and {shown.total - shown.lines.length} more: press Enter</li>
          ) : null}
        </ul>
      ) : null}
    </search>
  );
}
