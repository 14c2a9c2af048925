/** One word, number, written date or mark of a line, with its place in the text. */
export interface Token {
  readonly kind: "word" | "number" | "short-year" | "date" | "mark";
  readonly from: number;
  readonly to: number;
  /** as typed */
  readonly text: string;
  /** lower case, all apostrophes `'` */
  readonly low: string;
  /** of numbers; the two digits of a short year */
  readonly number: number | null;
}

/** Short ways of writing, read as the word they stand for; the stop of "fr." belongs to it. The text stays as typed. */
const SHORT_FOR: Record<string, string> = {
  "&": "and",
  "w/": "with",
  abt: "about",
  approx: "approx",
  doz: "dozen",
  dz: "dozen",
  fr: "from",
  frm: "from",
  germ: "germ",
  germd: "germinated",
  "germ'd": "germinated",
  harv: "harvested",
  lib: "library",
  pl: "plants",
  pls: "plants",
  plt: "plants",
  plts: "plants",
  plnts: "plants",
  rcvd: "received",
  recd: "received",
  "rec'd": "received",
  rog: "rogued",
  sds: "seeds",
  svd: "saved",
  yr: "year",
  yrs: "years",
};

const FRACTIONS: Record<string, number> = { "½": 0.5, "¼": 0.25, "¾": 0.75, "⅓": 1 / 3, "⅔": 2 / 3 };

const SHAPES = [
  // 20/5/87, 20.5.1987
  ["date", /\d{1,2}([./])\d{1,2}\1(?:\d{4}|\d{2})(?![\p{L}\d])/uy],
  // '94
  ["short-year", /['’‘´`](\d{2})(?!\d)/uy],
  // 1,200 and 12,400; then 1,5 before a unit of weight; then 1.5; then 12 and 1½
  [
    "number",
    /\d{1,3}(?:,\d{3})+(?![\d,])|\d+,\d{1,2}(?=\s?(?:g|kg|oz|lbs?|%)(?!\p{L}))|\d+\.\d+|\d+[½¼¾⅓⅔]?|[½¼¾⅓⅔]/uy,
  ],
  ["word", /&|w\/(?=\s)/uy],
  // 50 seeds -> 31 plants
  ["mark", /[-=]>|→/uy],
  ["word", /\p{L}[\p{L}\p{M}]*(?:['’‘-]\p{L}[\p{L}\p{M}]*)*(?:(?<=s)['’](?!\p{L}))?/uy],
  ["mark", /\S/uy],
] as const;

/** Cuts a line in tokens; blanks are left out, every other character stands in one token. */
export function tokenise(line: string): Token[] {
  const tokens: Token[] = [];
  let at = 0;
  while (at < line.length) {
    const token = tokenAt(line, at);
    if (token !== null) tokens.push(token);
    at = token === null ? at + 1 : token.to;
  }
  return tokens;
}

function tokenAt(line: string, at: number): Token | null {
  for (const [kind, shape] of SHAPES) {
    shape.lastIndex = at;
    const match = shape.exec(line);
    if (match === null) continue;
    const number = kind === "number" ? numberOf(match[0]) : kind === "short-year" ? Number(match[1]) : null;
    const plain = match[0].toLowerCase().replace(/[’‘]/g, "'");
    const full = kind === "word" ? SHORT_FOR[plain] : undefined;
    const to = at + match[0].length + (full !== undefined && line[at + match[0].length] === "." ? 1 : 0);
    return { kind, from: at, to, text: line.slice(at, to), low: full ?? plain, number };
  }
  return null;
}

function numberOf(text: string): number {
  if (/^\d{1,3}(?:,\d{3})+$/.test(text)) return Number(text.replaceAll(",", ""));
  const fraction = FRACTIONS[text.slice(-1)];
  if (fraction !== undefined) return Number(text.slice(0, -1) || "0") + fraction;
  return Number(text.replace(",", "."));
}

/** The words of tokens `from` to `to` (not included) as they stand in the line. */
export function wordsOf(line: string, tokens: readonly Token[], from: number, to: number): string {
  const [first, last] = [tokens[from], tokens[to - 1]];
  return first === undefined || last === undefined ? "" : line.slice(first.from, last.to);
}

/** Whether token `at` follows the one before it without a blank. */
export function isAdjacent(tokens: readonly Token[], at: number): boolean {
  const [before, token] = [tokens[at - 1], tokens[at]];
  return before !== undefined && token !== undefined && before.to === token.from;
}
