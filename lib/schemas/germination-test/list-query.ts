import { z } from "zod";

/** The columns of the list of tests, by which it can be put in order. */
export const testColumns = [
  "test",
  "lot",
  "variety",
  "crop",
  "set-up",
  "basis",
  "sown",
  "germination",
  "stage",
  "note",
] as const;
export type TestColumn = (typeof testColumns)[number];

const sortable: readonly TestColumn[] = ["test", "lot", "variety", "crop", "set-up", "sown", "germination"];

export const testsAPage = 60;

const oneText = z
  .union([z.string(), z.array(z.string()).transform((texts) => texts[0] ?? "")])
  .optional()
  .catch(undefined)
  .transform((text) => text?.trim().slice(0, 200) ?? "");

/**
 * What of the tests is asked for, as it stands in the address: `?filter=pea&sort=-germination&page=2`. What is not understood is left
 * out, so that an old address still opens. Without an order the tests set up last come first.
 */
export const TestListQuerySchema = z.object({
  filter: oneText,
  sort: oneText.transform((text): { key: TestColumn; down: boolean } => {
    const down = text.startsWith("-");
    const key = sortable.find((column) => column === (down ? text.slice(1) : text));
    return key ? { key, down } : { key: "set-up", down: true };
  }),
  page: oneText.transform((text) => (/^[1-9]\d{0,5}$/.test(text) ? Number(text) : 1)),
});
export type TestListQuery = z.output<typeof TestListQuerySchema>;

/** The query for an address's parameters. */
export function readTestListQuery(params: Readonly<Record<string, unknown>>): TestListQuery {
  return TestListQuerySchema.parse({ filter: params.filter, sort: params.sort, page: params.page });
}

/** The address of a page of the same list, with the columns that were chosen. */
export function testListAddress(
  { filter, sort, page }: TestListQuery,
  columns: readonly string[] | null = null,
): string {
  const parts = new URLSearchParams();
  if (filter !== "") parts.set("filter", filter);
  if (sort.key !== "set-up" || !sort.down) parts.set("sort", `${sort.down ? "-" : ""}${sort.key}`);
  if (columns) parts.set("columns", columns.join(","));
  if (page > 1) parts.set("page", String(page));
  const text = parts.toString().replaceAll("%2C", ",");
  return text === "" ? "/tests" : `/tests?${text}`;
}
