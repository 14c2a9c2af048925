import type { z } from "zod";
import { readShape } from "@/lib/schemas/calculations/read-shape";
import { type Outcome, refusal, refused } from "@/lib/science/outcome";

/** One key that goes in or comes out, as a person reads it. */
export interface CalculationKey {
  /** its place, as `replicates[].sown` */
  readonly key: string;
  /** what may stand there, with its unit and range */
  readonly shape: string;
  /** what it is, in trade words */
  readonly meaning: string;
  /** what is taken where it is left out */
  readonly usual?: string;
}

/** Hears how far a calculation is: done of so many. */
export type Watch = (done: number, of: number) => void;

export interface CalculationText {
  /** as typed after `calc` */
  readonly name: string;
  /** what it is called among growers */
  readonly title: string;
  /** what it answers, in a sentence or two */
  readonly answers: string;
  /** when to doubt the answer */
  readonly whenToDoubt: string;
  /** the formula in plain text, a line each */
  readonly formula: readonly string[];
  readonly symbols: readonly { readonly symbol: string; readonly meaning: string }[];
  /** author, year, where */
  readonly source: readonly string[];
  readonly input: readonly CalculationKey[];
  readonly output: readonly CalculationKey[];
}

/** A calculation as everybody meets it: on the command line, in an explanation, on the page of methods. */
export interface Calculation extends CalculationText {
  /** the shape of its input; ranges and what must go together are refused by the calculation itself */
  readonly shape: z.ZodType;
  /** an input that works */
  readonly example: unknown;
  /** any JSON value in; a value, or refusals each with its place, out. Those that go in steps tell `watch` how far they are. */
  readonly run: (input: unknown, watch?: Watch) => Outcome<object>;
}

/** Joins text, shape and formula to a calculation. */
export function calculation<Input>(
  text: CalculationText,
  shape: z.ZodType<Input>,
  example: Input,
  compute: (input: Input, watch?: Watch) => Outcome<object>,
): Calculation {
  const run = (input: unknown, watch?: Watch): Outcome<object> => {
    const read = readShape(shape, input);
    if (!read.ok) return read;
    const outcome = compute(read.value, watch);
    if (!outcome.ok || allFinite(outcome.value)) return outcome;
    const needed = "figures of an ordinary size are needed, each well below 1e150";
    return refused(refusal("beyond-numbers", [], input, "leads to an answer beyond what a number can hold", needed));
  };
  return { ...text, shape, example, run };
}

/** Whether every number of an answer is one: JSON has no other. */
function allFinite(value: unknown): boolean {
  if (typeof value === "number") return Number.isFinite(value);
  if (typeof value !== "object" || value === null) return true;
  return Object.values(value).every(allFinite);
}
