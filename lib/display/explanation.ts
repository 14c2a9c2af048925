/** One input of a computed figure; `href` leads to the record it was read from. */
export interface ExplanationInput {
  readonly name: string;
  readonly value: string;
  readonly href?: string;
}

interface Told {
  /** what the figure is: "Effective size of the 1994 grow-out" */
  readonly title: string;
  /** the figure as it is shown, with its unit */
  readonly answer: string;
  /** plain text, symbols named: "Ne = 4·m·f / (m + f)" */
  readonly formula: string;
  readonly inputs: readonly ExplanationInput[];
  /** one sentence a default that moved the figure */
  readonly assumed: readonly string[];
  /** how far it can be off, and what would narrow it */
  readonly unsure?: string;
  /** author, year, equation or table */
  readonly sources: readonly string[];
}

/** What no calculation makes, each with the reason: sums, counts and rules that are read off the records. */
export const plainFigures = {
  "sum of the ledger": "entries of one jar, added up",
  "count of places": "holders whose word or seed is young enough, counted",
  "rule of distance": "metres on record, held against the metres of the crop's profile",
  "rule of the season": "records that a rule of the settings picks out, counted",
} as const;

export type PlainFigure = keyof typeof plainFigures;

/**
 * How a computed figure came about, in words: what every figure on a page opens to, and what a print shows below it. It leads to the calculation
 * that made it: by the command line that gives the same number (`calc`), or by the calculation's name (`method`). What no calculation makes says
 * so (`plain`).
 */
export type Explanation = Told &
  (
    | { readonly calc: string; readonly method?: string; readonly plain?: undefined }
    | { readonly method: string; readonly calc?: string; readonly plain?: undefined }
    | { readonly plain: PlainFigure; readonly calc?: undefined; readonly method?: undefined }
  );

/** The name of the calculation behind a figure; null for a plain one. `figures` prints what the lineage gives. */
export function methodOf({ calc, method }: Explanation): string | null {
  if (method) return method;
  return calc?.match(/calc -- ([a-z-]+)/)?.[1] ?? (calc?.includes("figures") ? "lineage" : null);
}
