"use client";

import { type KeyboardEvent, useEffect, useRef, useState } from "react";
import { Button } from "@/components/ui";
import { unknownSource } from "../_lines/corrections";
import type { LineField } from "../_lines/line-field";
import type { Fix } from "../_lines/typed-line";
import styles from "./understood.module.css";

/** A lot that can be chosen for another: one of the lines, one that stands already, or that nobody knows. */
export interface LotChoice {
  readonly value: string;
  readonly words: string;
}

/** One thing that was understood: press it to change it or leave it out. Enter puts it right, Escape leaves it. */
export function FieldValue({
  field,
  fix,
  fault,
  lots,
  whichLine,
  onFix,
}: {
  field: LineField;
  fix: Fix | undefined;
  fault: string | undefined;
  lots: readonly LotChoice[];
  whichLine: number;
  onFix: (fix: Fix | null) => void;
}) {
  const [open, setOpen] = useState(false);
  const button = useRef<HTMLButtonElement>(null);
  const close = () => {
    setOpen(false);
    requestAnimationFrame(() => button.current?.focus());
  };
  const put = (next: Fix | null) => {
    onFix(next);
    close();
  };
  const shown = field.kind === "lot" ? (lots.find((lot) => lot.value === field.text)?.words ?? field.text) : field.text;
  return (
    <li className={styles.item} data-open={open || undefined}>
      {open || field.text !== null ? <span className={styles.label}>{field.label}</span> : null}
      {open ? (
        <Editor
          field={field}
          start={startText(field, fix)}
          lots={lots}
          fixed={fix !== undefined}
          put={put}
          close={close}
        />
      ) : (
        <button
          ref={button}
          type="button"
          className={styles.value}
          data-certainty={field.text === null ? "open" : field.certainty}
          data-fixed={fix !== undefined || undefined}
          aria-label={`Line ${whichLine}, ${field.label}: ${shown ?? "not said"}${fix ? ", put right by you" : ""}. Change it`}
          onClick={() => setOpen(true)}
        >
          {shown ?? field.label}
        </button>
      )}
      {fault ? (
        <span className={styles.fault} role="status">
          {fault}
        </span>
      ) : null}
    </li>
  );
}

function startText(field: LineField, fix: Fix | undefined): string {
  if (fix && "text" in fix) return fix.text;
  return field.text ?? "";
}

const sharesChoices: readonly LotChoice[] = [
  { value: "equal", words: "the same from each" },
  { value: "unequal", words: "not the same" },
];
const keptChoices: readonly LotChoice[] = [
  { value: "yes", words: "yes" },
  { value: "no", words: "no" },
];

const hints: Readonly<Partial<Record<LineField["kind"], string>>> = {
  year: "1994, about 1994, in the 1980s",
  date: "1994, 1994-05, 1994~",
  count: "40, about 40, 30-40",
  amount: "350 g, 2 oz, 500 seeds",
  share: "1/3, 30 %",
  test: "18 of 20",
};

function Editor({
  field,
  start,
  lots,
  fixed,
  put,
  close,
}: {
  field: LineField;
  start: string;
  lots: readonly LotChoice[];
  fixed: boolean;
  put: (fix: Fix | null) => void;
  close: () => void;
}) {
  const [text, setText] = useState(start);
  const control = useRef<HTMLInputElement & HTMLSelectElement>(null);
  useEffect(() => {
    control.current?.focus();
    control.current?.select?.();
  }, []);
  const choices =
    field.kind === "lot"
      ? [...lots, { value: unknownSource, words: "nobody knows" }]
      : field.kind === "shares"
        ? sharesChoices
        : field.kind === "kept"
          ? keptChoices
          : null;
  const keys = (event: KeyboardEvent) => {
    if (event.key === "Escape") {
      event.preventDefault();
      close();
    } else if (event.key === "Enter" && !(event.target instanceof HTMLButtonElement)) {
      event.preventDefault();
      if (text.trim() === start.trim() || text.trim() === "") close();
      else put({ text: text.trim() });
    }
  };
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the keys are those of the control inside, heard where they pass by
    <span className={styles.editor} onKeyDown={keys}>
      {choices ? (
        <select
          ref={control}
          className={styles.control}
          aria-label={field.label}
          value={choices.some((choice) => choice.value === text) ? text : ""}
          onChange={(event) => put({ text: event.target.value })}
        >
          <option value="" disabled>
            choose
          </option>
          {choices.map((choice) => (
            <option key={choice.value} value={choice.value}>
              {choice.words}
            </option>
          ))}
        </select>
      ) : (
        <input
          ref={control}
          className={styles.control}
          aria-label={field.label}
          value={text}
          placeholder={hints[field.kind]}
          autoComplete="off"
          onChange={(event) => setText(event.target.value)}
        />
      )}
      {choices ? null : (
        <Button kind="quiet" onClick={() => (text.trim() === "" ? close() : put({ text: text.trim() }))}>
          Put right
        </Button>
      )}
      {field.canDrop && field.text !== null ? (
        <Button kind="quiet" onClick={() => put({ dropped: true })}>
          Leave out
        </Button>
      ) : null}
      {fixed ? (
        <Button kind="quiet" onClick={() => put(null)}>
          As read
        </Button>
      ) : null}
      <Button kind="quiet" onClick={close}>
        Leave it
      </Button>
    </span>
  );
}
