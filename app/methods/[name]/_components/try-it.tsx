"use client";

import { useId, useMemo, useState } from "react";
import { LongCalculation, useLongCalculation } from "@/components/long-calculation";
import { SimpleTable } from "@/components/tables";
import { Button, Notice } from "@/components/ui";
import { refusalSentence } from "@/lib/display/refusals";
import { calculationNamed } from "@/lib/schemas/calculations";
import type { CalculationKey } from "@/lib/schemas/calculations/calculation";
import { takesLong } from "@/lib/schemas/calculations/takes-long";
import type { Outcome } from "@/lib/science/outcome";
import { answerText, inputOf, laidOut, textsOf } from "./inputs";
import styles from "./try-it.module.css";

/**
 * An example with fields to change; the answer follows as they are typed, worked out in the browser by the same code. What would hold the browser
 * up is worked out by the server, once it is asked to.
 */
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
  const { input, outcome } = useMemo(() => {
    const typed = inputOf(texts);
    return { input: typed, outcome: takesLong(name, typed) ? undefined : calculationNamed(name)?.run(typed) };
  }, [name, texts]);
  const asJson = JSON.stringify(input);
  const line = `echo '${asJson.replaceAll("'", "'\\''")}' | npm run --silent calc -- ${name}`;
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
        {outcome ? (
          <AnswerOrWhy of={outcome} keys={answers} />
        ) : (
          <AnsweredByServer key={asJson} name={name} input={input} keys={answers} />
        )}
        <p className={styles.line}>
          The same from the command line: <code>{line}</code>
        </p>
      </div>
    </div>
  );
}

/** What takes long: nothing is worked out before it is asked for; a changed input begins anew. */
function AnsweredByServer({ name, input, keys }: { name: string; input: unknown; keys: readonly CalculationKey[] }) {
  const { state, start, stop } = useLongCalculation();
  if (state.state === "answered") return <AnswerOrWhy of={state.answer} keys={keys} />;
  if (state.state !== "idle")
    return <LongCalculation of={state} unit={name === "gene-drop" ? "runs" : "steps"} onStop={stop} />;
  return (
    <div className="stack-near">
      <p>This is much to work out: it would hold your browser up. The server does it beside its other work.</p>
      <p>
        <Button kind="plain" onClick={() => start(name, input)}>
          Work it out
        </Button>
      </p>
    </div>
  );
}

function AnswerOrWhy({ of, keys }: { of: Outcome<object>; keys: readonly CalculationKey[] }) {
  if (of.ok) return <Answer of={of.value} keys={keys} />;
  return (
    <Notice kind="waiting" title="It cannot be worked out so">
      {of.refusals.map((each) => (
        <p key={`${each.path.join(".")} ${each.code}`}>
          {each.path.length > 0 ? <code>{each.path.join(".")}</code> : null} {refusalSentence(each)}
        </p>
      ))}
    </Notice>
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
