"use client";

import { listed } from "@/lib/display/plurals";
import type { LineField } from "../_lines/line-field";
import { leftOpen, lineFields } from "../_lines/line-fields";
import type { Fix, Fixes, ReadLine } from "../_lines/typed-line";
import { FieldValue, type LotChoice } from "./field-value";
import styles from "./understood.module.css";

const kinds: Readonly<Record<ReadLine["proposal"]["kind"], string>> = {
  "grow-out": "A grow-out",
  received: "Seed received",
  test: "A germination test",
  given: "Seed given away",
  gap: "Nothing grown",
  failed: "A grow-out without seed",
  blend: "A blend",
  split: "A split",
  note: "Words alone",
};

/** What was understood of a line, beside its words: a proposal, each part to be changed or left out; and what was not. */
export function Understood({
  line,
  place,
  fixes,
  lots,
  refusals,
  onFix,
}: {
  line: ReadLine;
  place: number;
  fixes: Fixes;
  lots: readonly LotChoice[];
  /** sentences of a booking that was refused, about this line */
  refusals: readonly string[];
  onFix: (key: string, fix: Fix | null) => void;
}) {
  const { proposal, notUnderstood, faults } = line;
  if (line.words.trim() === "") return null;
  const note = proposal.kind === "note";
  const nameOf = (lot: string) => lots.find((each) => each.value === lot)?.words ?? lot;
  const fields = note ? [] : [...lineFields(line, nameOf), ...droppedFields(line, fixes)];
  const value = (field: LineField) => (
    <FieldValue
      key={field.key}
      field={field}
      fix={fixes[field.key]}
      fault={faults[field.key]}
      lots={lots}
      whichLine={place + 1}
      onFix={(fix) => onFix(field.key, fix)}
    />
  );
  const open = note ? [] : leftOpen(line);
  const said = fields.filter((field) => field.text !== null);
  const unsaid = fields.filter((field) => field.text === null);
  return (
    <div className={styles.understood}>
      <p className={styles.kind}>{kinds[proposal.kind]}</p>
      {said.length > 0 ? (
        <ul className={styles.fields} aria-label={`Understood of line ${place + 1}`}>
          {said.map(value)}
        </ul>
      ) : null}
      {proposal.assumed.map((each) => (
        <p key={each.text} className={styles.assumed}>
          {withNumbers(each.text, lots)}
        </p>
      ))}
      {notUnderstood.length > 0 ? (
        <p className={styles.not}>
          Not understood, kept in words: {notUnderstood.map((span) => `“${span.words}”`).join(", ")}
        </p>
      ) : null}
      {unsaid.length > 0 ? (
        <div className={styles.unsaid}>
          <span>Not said, and can be said here: </span>
          <ul className={styles.fields} aria-label={`Not said in line ${place + 1}`}>
            {unsaid.map(value)}
          </ul>
        </div>
      ) : null}
      {open.length > 0 ? <p className={styles.open}>Also not said: {listed(open)}.</p> : null}
      {refusals.map((sentence) => (
        <p key={sentence} className={styles.fault} role="alert">
          {sentence}
        </p>
      ))}
    </div>
  );
}

/** Sentences of the reading name lots by their place in the lines; on the screen they go by their numbers. */
function withNumbers(text: string, lots: readonly LotChoice[]): string {
  return lots.reduce(
    (told, { value, words }) =>
      told
        .replace(`be "${value}"`, `be ${words}`)
        .replace(`"${value}" is taken`, `${words} is taken`)
        .replace(`"${value}" of an`, `${words} of an`),
    text,
  );
}

/** What was left out altogether stays in sight, so that it can come back. */
function droppedFields(line: ReadLine, fixes: Fixes): LineField[] {
  const present = new Set(lineFields(line).map((field) => field.key));
  return Object.entries(fixes)
    .filter(([key, fix]) => "dropped" in fix && !present.has(key))
    .map(([key]) => ({
      key,
      label: `left out: ${key.replace(/\.\d+$/, "")}`,
      text: null,
      certainty: "sure",
      kind: "words",
      canDrop: false,
    }));
}
