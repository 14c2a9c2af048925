/** The top keys of an input, each as the text of its field. Numbers and words stand as they are, all else as JSON. */
export function textsOf(input: unknown): Record<string, string> {
  if (typeof input !== "object" || input === null || Array.isArray(input)) return {};
  return Object.fromEntries(Object.entries(input).map(([key, value]) => [key, textOf(value)]));
}

function textOf(value: unknown): string {
  if (typeof value === "string") return value;
  if (!Array.isArray(value)) return JSON.stringify(value);
  // A list of things stands a thing a line, so that a line can be added.
  return value.every((each) => typeof each === "object" && each !== null)
    ? `[\n${value.map((each) => `  ${JSON.stringify(each)}`).join(",\n")}\n]`
    : JSON.stringify(value);
}

/** The input that the texts of the fields mean: an empty one is left out, JSON is read, all else is a word. */
export function inputOf(texts: Readonly<Record<string, string>>): Record<string, unknown> {
  const entries = Object.entries(texts).flatMap(([key, text]): [string, unknown][] => {
    const trimmed = text.trim();
    if (trimmed === "") return [];
    try {
      return [[key, JSON.parse(trimmed)]];
    } catch {
      const comma = /^-?\d+,\d+$/.test(trimmed) ? Number(trimmed.replace(",", ".")) : trimmed;
      return [[key, comma]];
    }
  });
  return Object.fromEntries(entries);
}

/** One value of an answer to read: numbers to nine significant figures. */
export function answerText(value: unknown): string {
  if (value === null || value === undefined) return "does not apply";
  if (typeof value === "number") return String(Number(value.toPrecision(9)));
  if (typeof value === "string") return value;
  if (typeof value === "boolean") return value ? "yes" : "no";
  if (Array.isArray(value)) return value.length === 0 ? "none" : value.map(answerText).join("; ");
  return Object.entries(value)
    .map(([key, each]) => `${key} ${answerText(each)}`)
    .join(", ");
}

/** An answer as it is laid out: single values by their place (`exact.low`), and each list of records as a table. */
export interface LaidOut {
  readonly values: readonly { readonly key: string; readonly value: unknown }[];
  readonly tables: readonly { readonly key: string; readonly rows: readonly Readonly<Record<string, unknown>>[] }[];
}

export function laidOut(answer: object): LaidOut {
  const values: { key: string; value: unknown }[] = [];
  const tables: { key: string; rows: Record<string, unknown>[] }[] = [];
  for (const [key, value] of Object.entries(answer)) {
    if (isRecords(value) && key !== "assumed") tables.push({ key, rows: value });
    else if (isRecord(value)) {
      for (const [inner, each] of Object.entries(value)) values.push({ key: `${key}.${inner}`, value: each });
    } else values.push({ key, value });
  }
  return { values, tables };
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

function isRecords(value: unknown): value is Record<string, unknown>[] {
  return Array.isArray(value) && value.length > 0 && value.every(isRecord);
}
