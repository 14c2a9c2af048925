/** One input of a computed figure; `href` leads to the record it was read from. */
export interface ExplanationInput {
  readonly name: string;
  readonly value: string;
  readonly href?: string;
}

/** How a computed figure came about, in words: what every figure on a page opens to, and what a print shows below it. */
export interface Explanation {
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
  /** the command line that gives the same number */
  readonly calc?: string;
}
