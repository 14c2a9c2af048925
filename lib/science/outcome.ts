/**
 * What a calculation or rule answers: a value, or refusals that say what to do. Bad data is never thrown.
 */
export type Path = readonly (string | number)[];

/** Facts first (code, where, what stands there, what would be right); the sentence is made from them. */
export interface Refusal {
  readonly code: string;
  /** leads to the field at fault */
  readonly path: Path;
  readonly given: unknown;
  readonly needed: string;
  readonly sentence: string;
}

/** A default that moves the figure, named. */
export interface Assumption {
  readonly code: string;
  readonly text: string;
}

export type Outcome<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly refusals: readonly Refusal[] };

export function accepted<T>(value: T): Outcome<T> {
  return { ok: true, value };
}

export function refused<T = never>(...refusals: Refusal[]): Outcome<T> {
  return { ok: false, refusals };
}

/** Builds a refusal with its sentence: `"seven" is not a whole number; write it as 7`. */
export function refusal(code: string, path: Path, given: unknown, wrong: string, needed: string): Refusal {
  return { code, path, given, needed, sentence: `${shown(given)} ${wrong}; ${needed}` };
}

function shown(given: unknown): string {
  if (given === undefined || given === null || given === "") return "nothing";
  if (typeof given === "string") return `"${given}"`;
  if (typeof given === "number" || typeof given === "boolean") return String(given);
  const text = JSON.stringify(given) ?? String(given);
  return text.length > 60 ? `${text.slice(0, 57)}...` : text;
}
