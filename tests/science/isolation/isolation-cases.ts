import { readFileSync } from "node:fs";

export interface IsolationCase {
  readonly name: string;
  readonly fn: string;
  readonly input: Readonly<Record<string, unknown>>;
  readonly expected: unknown;
  readonly tolerance: { readonly abs?: number; readonly rel?: number; readonly factor?: number };
  readonly source: string;
}

const file = new URL("../../reference/isolation-cases.json", import.meta.url);
const { cases } = JSON.parse(readFileSync(file, "utf8")) as { cases: readonly IsolationCase[] };

/** The shared cases of one function. */
export function isolationCases(fn: string): IsolationCase[] {
  const found = cases.filter((each) => each.fn === fn);
  if (found.length === 0) throw new Error(`no case of ${fn}`);
  return found;
}

/** Whether a number lies within a case's tolerance. */
export function within(given: number, expected: number, { abs, rel, factor }: IsolationCase["tolerance"]): boolean {
  if (abs !== undefined) return Math.abs(given - expected) <= abs;
  if (rel !== undefined) return Math.abs(given - expected) <= rel * Math.abs(expected);
  return factor !== undefined && given <= expected * factor && given >= expected / factor;
}
