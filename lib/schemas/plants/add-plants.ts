import { z } from "zod";
import type { Hemisphere } from "@/lib/science/dates/fuzzy-date";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { count, day, type FieldReader, name, neededField, oneOf, openField, words } from "../lots/form-fields";
import { intents } from "./plant-cells";

const mostAtOnce = 1000;

const number: FieldReader<number> = (text) => {
  if (/^\d{1,6}$/.test(text.trim())) return accepted(Number(text));
  return refused(refusal("not-a-count", [], text, "is no number of a tag", "write a whole number, as 1"));
};

/** Plants as they are added: one by its tag, or a run of numbers with letters before them if need be. */
export function addPlantsSchema(hemisphere: Hemisphere) {
  return z.object({
    tag: openField(name),
    letters: openField(name),
    from: openField(number),
    to: openField(number),
    cell: openField(name),
    perCell: openField(count),
    intent: openField(oneOf(intents)),
    on: neededField(day(hemisphere), "write the day in the field, as 2024-08-20 or 2024-08"),
    words: openField(words),
    steward: openField(words),
  });
}

export type AddPlantsInput = z.output<ReturnType<typeof addPlantsSchema>>;

/** Which plants are meant: one tag, or a run of numbers. */
export type RunOfPlants = Pick<AddPlantsInput, "tag" | "letters" | "from" | "to" | "cell" | "perCell">;

/** A plant to be added. */
export interface NewPlant {
  readonly tag: string;
  readonly cell: string | null;
}

/**
 * The plants that are meant: the one tag, or every number from the first to the last. Where so many stand in a cell, the cells count up from
 * the one that is written (A, B, C; or 1, 2, 3; A1, A2, A3).
 */
export function plantsMeant(input: RunOfPlants): Outcome<readonly NewPlant[]> {
  const { tag, letters, from, to, cell, perCell } = input;
  if (tag !== null && (from !== null || to !== null))
    return refused(refusal("two-ways", ["tag"], tag, "and a run of numbers stand both", "write one of the two"));
  if (tag !== null) return accepted([{ tag, cell }]);
  const last = to ?? from;
  const first = from ?? (to === null ? null : 1);
  if (first === null || last === null)
    return refused(refusal("missing", ["to"], "", "stands here", "write the last number, or one tag"));
  if (last < first)
    return refused(refusal("run-backwards", ["to"], last, `is below ${first}`, "write the last number of the run"));
  if (last - first + 1 > mostAtOnce) {
    const wrong = `makes ${last - first + 1} plants`;
    return refused(refusal("too-many", ["to"], last, wrong, `add at most ${mostAtOnce} in one go`));
  }
  if (perCell !== null && cell === null)
    return refused(refusal("missing", ["cell"], "", "stands here", "write the first cell, as A or 1"));
  const plants: NewPlant[] = [];
  for (let each = first; each <= last; each += 1) {
    const steps = perCell === null ? 0 : Math.floor((each - first) / perCell);
    plants.push({ tag: `${letters ?? ""}${each}`, cell: cell === null ? null : countedUp(cell, steps) });
  }
  return accepted(plants);
}

/** A name so many steps on: a number at its end counts up, else its last letter (Z goes on with AA). */
function countedUp(start: string, steps: number): string {
  if (steps === 0) return start;
  const [, before = "", digits = ""] = /^(.*?)(\d+)$/.exec(start) ?? [];
  if (digits !== "") return `${before}${String(Number(digits) + steps).padStart(digits.length, "0")}`;
  const [, front = "", letters = ""] = /^(.*?)([A-Z]+|[a-z]+)$/.exec(start) ?? [];
  if (letters === "") return `${start} ${steps + 1}`;
  const base = letters === letters.toUpperCase() ? 65 : 97;
  let value = [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - base + 1, 0) + steps;
  let text = "";
  for (; value > 0; value = Math.floor((value - 1) / 26)) text = String.fromCharCode(base + ((value - 1) % 26)) + text;
  return front + text;
}
