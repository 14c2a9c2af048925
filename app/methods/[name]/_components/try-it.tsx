"use client";

import { useId, useMemo, useState } from "react";
import { SimpleTable } from "@/components/tables";
import { Notice } from "@/components/ui";
import { refusalSentence } from "@/lib/display/refusals";
import { calculationNamed } from "@/lib/schemas/calculations";
import type { CalculationKey } from "@/lib/schemas/calculations/calculation";
import { answerText, inputOf, laidOut, textsOf } from "./inputs";
import styles from "./try-it.module.css";

/** An example with fields to change; the answer follows as they are typed, worked out in the browser by the same code. */
export function TryIt({
  name,
  example,
  keys,
  answers,
}: {
  name: string;
  example: unknown;
  keys: readonly CalculationKey[];
  answers: readonly CalculationKey[];
}) {
  const start = useMemo(() => ({ ...blank(keys), ...textsOf(example) }), [keys, example]);
  const [texts, setTexts] = useState<Record<string, string>>(start);
  const input = inputOf(texts);
  const outcome = calculationNamed(name)?.run(input);
  const line = `echo '${JSON.stringify(input).replaceAll("'", "'\\''")}' | npm run --silent calc -- ${name}`;
  return (
    <div className={styles.tried}>
      <form className="stack-near" onSubmit={(event) => event.preventDefault()} onReset={() => setTexts(start)}>
        {Object.entries(texts).map(([key, text]) => (
          <InputField
            key={key}
            name={key}
            text={text}
            meaning={meaningOf(keys, key)}
            onText={(next) => setTexts({ ...texts, [key]: next })}
          />
        ))}
        <p className="not-on-paper">
          <button type="reset" className={styles.reset}>
            Back to the example
          </button>
        </p>
      </form>
      <div className="stack-near" aria-live="polite">
        {outcome?.ok ? (
          <Answer of={outcome.value} keys={answers} />
        ) : (
          <Notice kind="waiting" title="It cannot be worked out so">
            {(outcome?.refusals ?? []).map((each) => (
              <p key={`${each.path.join(".")} ${each.code}`}>
                {each.path.length > 0 ? <code>{each.path.join(".")}</code> : null} {refusalSentence(each)}
              </p>
            ))}
          </Notice>
        )}
        <p className={styles.line}>
          The same from the command line: <code>{line}</code>
        </p>
      </div>
    </div>
  );
}

function InputField({
  name,
  text,
  meaning,
  onText,
}: {
  name: string;
  text: string;
  meaning: string;
  onText: (text: string) => void;
}) {
  const id = useId();
  const lines = text.split("\n").length;
  const control = { id, value: text, className: styles.control, autoComplete: "off", spellCheck: false };
  return (
    <div className={styles.field}>
      <label htmlFor={id}>
        <b>{name}</b> <span className="quiet">{meaning}</span>
      </label>
      {lines > 1 || text.length > 40 ? (
        <textarea {...control} rows={Math.min(12, Math.max(3, lines))} onChange={(e) => onText(e.target.value)} />
      ) : (
        <input {...control} onChange={(e) => onText(e.target.value)} />
      )}
    </div>
  );
}

function Answer({ of, keys }: { of: object; keys: readonly CalculationKey[] }) {
  const { values, tables } = laidOut(of);
  return (
    <>
      <SimpleTable
        columns={[
          { key: "name", name: "Answer" },
          { key: "value", name: <span className="heard">Value</span>, kind: "count" },
        ]}
        rows={values.map(({ key, value }) => ({
          id: key,
          cells: { name: <AnswerName name={key} meaning={meaningOf(keys, key)} />, value: <Value of={value} /> },
        }))}
      />
      {tables.map(({ key, rows }) => {
        const columns = [...new Set(rows.flatMap((row) => Object.keys(row)))];
        return (
          <SimpleTable
            key={key}
            caption={key}
            columns={columns.map((column, place) => ({
              key: column,
              name: column,
              kind: place === 0 ? "words" : "count",
            }))}
            rows={rows.map((row, place) => ({
              id: `${place}`,
              cells: Object.fromEntries(columns.map((column) => [column, answerText(row[column])])),
            }))}
          />
        );
      })}
    </>
  );
}

function AnswerName({ name, meaning }: { name: string; meaning: string }) {
  return (
    <>
      <code>{name}</code>
      {meaning ? <span className={styles.meaning}>{meaning}</span> : null}
    </>
  );
}

function Value({ of }: { of: unknown }) {
  if (Array.isArray(of) && of.length > 0) {
    return (
      <ul className={styles.values}>
        {of.map((each, place) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: answers stand in their order
          <li key={place}>
            {typeof each === "object" && each !== null && "text" in each ? String(each.text) : answerText(each)}
          </li>
        ))}
      </ul>
    );
  }
  return <>{answerText(of)}</>;
}

/** Keys at the top that the example leaves out stand there empty, so that they can be tried. */
function blank(keys: readonly CalculationKey[]): Record<string, string> {
  const tops = keys.flatMap(({ key }) => key.split(",").map((each) => each.trim()));
  return Object.fromEntries(tops.filter((key) => /^[A-Za-z]+$/.test(key)).map((key) => [key, ""]));
}

function meaningOf(keys: readonly CalculationKey[], name: string): string {
  const [top] = name.split(".");
  const exact = keys.find(({ key }) => key.split(",").some((each) => each.trim() === name));
  const above = keys.find(({ key }) => key.split(",").some((each) => each.trim() === top));
  return exact?.meaning ?? (name.endsWith(".low") || !name.includes(".") ? (above?.meaning ?? "") : "");
}
