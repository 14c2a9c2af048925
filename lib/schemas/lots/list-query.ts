import { z } from "zod";

/** What the list of lots can show and be sorted by. The number always stands first. */
export const lotColumns = [
  "number",
  "variety",
  "crop",
  "holder",
  "year",
  "grams",
  "live",
  "test",
  "diversity",
  "generations",
  "status",
  "places",
  "kind",
  "code",
  "notes",
] as const;
export type LotColumn = (typeof lotColumns)[number];

/** The columns that stand there until others are chosen. */
export const usualColumns: readonly LotColumn[] = [
  "number",
  "variety",
  "holder",
  "year",
  "grams",
  "live",
  "test",
  "diversity",
  "status",
];

export const seedFilters = ["some", "none", "unknown"] as const;
export const testFilters = ["never", "below", "urgent", "above"] as const;

/** The filters of the list, beside what is typed to find a lot. */
export const lotFilters = ["variety", "crop", "holder", "kind", "status", "place", "seed", "test"] as const;
export type LotFilter = (typeof lotFilters)[number];

/** The longest name that a list may be given, in characters. */
export const longestListName = 80;

/** How many lots stand on one page of the list. */
export const lotsOnPage = 60;

const oneText = z
  .union([z.string(), z.array(z.string()).transform((texts) => texts[0] ?? "")])
  .optional()
  .catch(undefined)
  .transform((text) => text?.trim() || null);

function among<const Words extends readonly [string, ...string[]]>(choices: Words) {
  return oneText.pipe(z.enum(choices).nullable().catch(null));
}

const sorting = oneText.transform((text): { key: LotColumn; down: boolean } | null => {
  const down = text?.startsWith("-") ?? false;
  const key = lotColumns.find((column) => column === (down ? text?.slice(1) : text));
  return key ? { key, down } : null;
});

const chosenColumns = z
  .union([z.string().transform((text) => [text]), z.array(z.string())])
  .optional()
  .catch(undefined)
  .transform((texts): readonly LotColumn[] | null => {
    const wanted = new Set((texts ?? []).flatMap((text) => text.split(",")));
    const chosen = lotColumns.filter((column) => wanted.has(column));
    return chosen.length > 0 ? chosen : null;
  });

/**
 * What of the lots is asked for, as it stands in the address: `?filter=purp+pod&crop=pea&sort=-grams&columns=number,variety`. An address
 * typed by hand is never refused: what is not understood in it is left out.
 */
export const LotListQuerySchema = z.object({
  filter: oneText,
  variety: oneText,
  crop: oneText,
  /** a steward's id, or "unknown" */
  holder: oneText,
  kind: oneText,
  /** a status, or "unknown" */
  status: oneText,
  place: oneText,
  seed: among(seedFilters),
  test: among(testFilters),
  /** null: what is in the jars first, by variety, then by number; lots with nothing left after it */
  sort: sorting,
  /** null: the usual columns */
  columns: chosenColumns,
  /** what somebody calls this list; it stands at its head */
  named: oneText.transform((text) => text?.replace(/\s+/g, " ").slice(0, longestListName).trim() || null),
  page: oneText.transform((text) => (text && /^[1-9]\d{0,5}$/.test(text) ? Number(text) : 1)),
});

export type LotListQuery = z.output<typeof LotListQuerySchema>;

/** The query as an address, some of it changed; what is as usual is left out. */
export function addressOfLotList(query: LotListQuery, changed: Partial<LotListQuery> = {}): string {
  const { columns, sort, page, ...filters } = { ...query, ...changed };
  const parts = new URLSearchParams();
  for (const [key, value] of Object.entries(filters)) if (value) parts.set(key, value);
  if (sort) parts.set("sort", `${sort.down ? "-" : ""}${sort.key}`);
  if (columns) parts.set("columns", columns.join(","));
  if (page > 1) parts.set("page", String(page));
  const text = parts.toString().replaceAll("%2C", ",");
  return text === "" ? "" : `?${text}`;
}
