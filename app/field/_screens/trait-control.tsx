import { useState } from "react";
import { dayInWords } from "@/lib/display/dates";
import type { ScoreShown } from "@/lib/field/screen-state";
import type { TraitInField } from "@/lib/schemas/field/field-pack";
import { scoreWords } from "../_words/score-words";
import controls from "./controls.module.css";
import { NumberPad } from "./number-pad";

/** What a control gives: a value, or a text for a category and a day. */
export type Given = { readonly value: number; readonly text: null } | { readonly value: null; readonly text: string };

/**
 * The control of one trait, large, where the thumb is. One tap is a score; a measure takes its figures first. `last` is what the plant before got:
 * one tap gives the same.
 */
export function TraitControl({
  trait,
  score,
  last,
  today,
  onGive,
  onSkip,
}: {
  trait: TraitInField;
  score: ScoreShown | undefined;
  last: ScoreShown | undefined;
  today: string;
  /** `stay` where more taps on the same trait are likely */
  onGive: (given: Given, stay: boolean) => void;
  onSkip: () => void;
}) {
  const same = last && scoreWords(trait, last);
  return (
    <>
      <p className={controls.asks} id="asks">
        {trait.name}
        <span className={controls.asksMore}>{askedInWords(trait)}</span>
      </p>
      <Control trait={trait} score={score} today={today} onGive={onGive} />
      <div className={controls.beside}>
        {last && same ? (
          <button
            type="button"
            className={controls.choice}
            onClick={() =>
              onGive(
                last.text === null ? { value: last.value ?? 0, text: null } : { value: null, text: last.text },
                false,
              )
            }
          >
            Same as last: {same}
          </button>
        ) : null}
        <button type="button" className={controls.quietChoice} onClick={onSkip}>
          {score ? "Next trait" : "Not looked"}
        </button>
      </div>
    </>
  );
}

function Control({
  trait,
  score,
  today,
  onGive,
}: {
  trait: TraitInField;
  score: ScoreShown | undefined;
  today: string;
  onGive: (given: Given, stay: boolean) => void;
}) {
  switch (trait.kind) {
    case "scale":
      return <Scale trait={trait} score={score} onGive={onGive} />;
    case "yes-no":
      return (
        <div className={controls.grid} data-columns="2">
          {[0, 1].map((value) => (
            <Choice key={value} on={score?.value === value} onTap={() => onGive({ value, text: null }, false)}>
              {value === 1 ? "Yes" : "No"}
            </Choice>
          ))}
        </div>
      );
    case "category":
      return <Category trait={trait} score={score} onGive={onGive} />;
    case "count":
      return <Count score={score} onGive={onGive} />;
    case "measure":
      return (
        <NumberPad
          label={trait.name}
          unit={trait.unit}
          decimals
          confirm="Record"
          onConfirm={(value) => onGive({ value, text: null }, false)}
        />
      );
    case "date":
      return <Day today={today} onGive={onGive} />;
  }
}

type Gives = { score: ScoreShown | undefined; onGive: (given: Given, stay: boolean) => void };

function Scale({ trait, score, onGive }: { trait: TraitInField } & Gives) {
  const low = trait.scaleLow ?? 1;
  const high = trait.scaleHigh ?? 9;
  const steps = Array.from({ length: Math.min(21, high - low + 1) }, (_, at) => low + at);
  return (
    <div className={controls.grid} data-columns={steps.length <= 6 ? steps.length : 5}>
      {steps.map((value) => (
        <Choice key={value} on={score?.value === value} onTap={() => onGive({ value, text: null }, false)}>
          {value}
        </Choice>
      ))}
    </div>
  );
}

function Category({ trait, score, onGive }: { trait: TraitInField } & Gives) {
  const [typed, setTyped] = useState("");
  if (trait.steps.length === 0) {
    return (
      <form
        className={controls.typing}
        onSubmit={(event) => {
          event.preventDefault();
          if (typed.trim() !== "") onGive({ value: null, text: typed.trim() }, false);
        }}
      >
        <input
          className={controls.input}
          aria-labelledby="asks"
          value={typed}
          maxLength={2000}
          onChange={(event) => setTyped(event.currentTarget.value)}
        />
        <button type="submit" className={controls.choice}>
          Record
        </button>
      </form>
    );
  }
  return (
    <div className={controls.grid} data-columns="2">
      {trait.steps.map(({ words }) => (
        <Choice key={words} on={score?.text === words} small onTap={() => onGive({ value: null, text: words }, false)}>
          {words}
        </Choice>
      ))}
    </div>
  );
}

/** Small counts at one tap; from there up and down by one. Each tap is stored. */
function Count({ score, onGive }: Gives) {
  const now = score?.value ?? null;
  const give = (value: number, stay: boolean) => onGive({ value, text: null }, stay);
  return (
    <>
      <div className={controls.grid} data-columns="5">
        {[0, 1, 2, 3, 4, 5, 6, 7, 8, 9].map((value) => (
          <Choice key={value} on={now === value} onTap={() => give(value, false)}>
            {value}
          </Choice>
        ))}
      </div>
      <div className={controls.stepper}>
        <button
          type="button"
          data-step
          className={controls.choice}
          aria-label="One less"
          disabled={now === null || now === 0}
          onClick={() => give((now ?? 1) - 1, true)}
        >
          −
        </button>
        <output className={controls.stepped}>{now ?? "not counted"}</output>
        <button
          type="button"
          data-step
          className={controls.choice}
          aria-label="One more"
          onClick={() => give((now ?? 0) + 1, true)}
        >
          +
        </button>
      </div>
    </>
  );
}

function Day({ today, onGive }: { today: string; onGive: Gives["onGive"] }) {
  const [day, setDay] = useState(today);
  return (
    <div className={controls.stepper}>
      <input
        className={controls.input}
        type="date"
        aria-labelledby="asks"
        value={day}
        max={today}
        onChange={(event) => setDay(event.currentTarget.value)}
      />
      <button
        type="button"
        className={controls.choice}
        disabled={day === ""}
        onClick={() => onGive({ value: null, text: day }, false)}
      >
        {day === today ? "Today" : `Record ${dayInWords(day)}`}
      </button>
    </div>
  );
}

export function Choice({
  on,
  small,
  onTap,
  children,
}: {
  on: boolean;
  small?: boolean;
  onTap: () => void;
  children: React.ReactNode;
}) {
  return (
    <button type="button" className={small ? controls.smallChoice : controls.choice} aria-pressed={on} onClick={onTap}>
      {children}
    </button>
  );
}

function askedInWords(trait: TraitInField): string {
  if (trait.kind === "scale" || trait.kind === "yes-no") {
    const named = trait.steps.flatMap(({ value, words }) =>
      value === null ? [] : [`${trait.kind === "yes-no" ? (value === 1 ? "yes" : "no") : value} ${words}`],
    );
    return named.join(" · ");
  }
  return trait.kind === "measure" && trait.unit !== null ? `in ${trait.unit}` : "";
}
