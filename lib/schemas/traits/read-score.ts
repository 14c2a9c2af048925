import type { Hemisphere } from "@/lib/science/dates/fuzzy-date";
import { parseDate } from "@/lib/science/dates/parse-date";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { decimal } from "../lots/form-fields";
import { writeDecimal } from "../notebook/decimal";
import { no, notLooked, type ScoreValue, yes } from "./score-value";
import { scaleEnds, type TraitDefinition } from "./trait";

/**
 * Reads what is typed as a score of a trait. Refused with what would be right: a step that the scale has not, a count that is not whole,
 * a word that is no choice, a date that is none. An empty cell is no score and is not read here.
 */
export function readScore(trait: TraitDefinition, typed: string, hemisphere: Hemisphere): Outcome<ScoreValue> {
  const text = typed.normalize("NFC").replace(/\s+/g, " ").trim();
  switch (trait.kind) {
    case "count":
      return numbered(readWhole(text));
    case "measure":
      return numbered(readMeasure(trait, text));
    case "scale":
      return numbered(readStep(trait, text));
    case "yes-no":
      return worded(readYesNo(text));
    case "category":
      return worded(readChoice(trait, text));
    case "date": {
      const read = parseDate(text, { hemisphere });
      return read.ok ? accepted({ value: null, text: read.value.text }) : read;
    }
  }
}

/** A score as it is typed, copied and written into a table. */
export function scoreText({ value, text }: ScoreValue): string {
  return text ?? (value === null ? "" : writeDecimal(value));
}

function numbered(read: Outcome<number>): Outcome<ScoreValue> {
  return read.ok ? accepted({ value: read.value, text: null }) : read;
}

function worded(read: Outcome<string>): Outcome<ScoreValue> {
  return read.ok ? accepted({ value: null, text: read.value }) : read;
}

function readWhole(text: string): Outcome<number> {
  const read = decimal({})(text);
  if (!read.ok) return refused(refusal("not-a-count", [], text, "is no count", "write a whole number, 0 or more"));
  if (Number.isInteger(read.value) && read.value >= 0) return read;
  return refused(refusal("not-a-count", [], text, "is no count", "write a whole number, 0 or more"));
}

/** A number with point or comma; the trait's own unit may stand behind it. */
function readMeasure({ unit }: TraitDefinition, text: string): Outcome<number> {
  const alone = unit !== null && text.toLowerCase().endsWith(unit.toLowerCase()) ? text.slice(0, -unit.length) : text;
  const read = decimal({})(alone);
  if (read.ok || unit === null) return read;
  return refused(refusal("not-a-measure", [], text, `is no number of ${unit}`, `write the ${unit} alone, as 12.5`));
}

function readStep(trait: TraitDefinition, text: string): Outcome<number> {
  const [low, high] = scaleEnds(trait);
  const { steps } = trait.wording;
  const named = Object.keys(steps).find((step) => folded(steps[step] ?? "") === folded(text));
  const read = decimal({})(named ?? text);
  if (read.ok && Number.isInteger(read.value) && read.value >= low && read.value <= high) return read;
  return refused(
    refusal("not-a-step", [], text, `is no step of ${low} to ${high}`, `write a whole number from ${low} to ${high}`),
  );
}

function readYesNo(text: string): Outcome<string> {
  const word = folded(text);
  if (["y", yes].includes(word)) return accepted(yes);
  if (["n", no].includes(word)) return accepted(no);
  if (["-", "–", "—", notLooked].includes(word)) return accepted(notLooked);
  return refused(
    refusal("not-yes-or-no", [], text, "is neither yes nor no", "write y for yes, n for no, or - for not looked"),
  );
}

/** A choice by its words, or by a beginning that only one of them has. A trait without a list takes any words. */
function readChoice({ wording: { choices } }: TraitDefinition, text: string): Outcome<string> {
  if (choices.length === 0) return accepted(text);
  const word = folded(text);
  const whole = choices.find((choice) => folded(choice) === word);
  const begun = choices.filter((choice) => folded(choice).startsWith(word));
  const found = whole ?? (begun.length === 1 ? begun[0] : undefined);
  if (found !== undefined) return accepted(found);
  const wrong = begun.length > 1 ? `may be ${begun.join(" or ")}` : "is not in the trait's list";
  return refused(refusal("not-a-choice", [], text, wrong, `write ${choices.join(", ")}`));
}

function folded(text: string): string {
  return text.normalize("NFC").replace(/\s+/g, " ").trim().toLowerCase();
}
