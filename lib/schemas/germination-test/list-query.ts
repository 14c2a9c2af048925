import { z } from "zod";

/** Columns by which the tests can be put in order. */
export const testSorts = ["set-up", "test", "lot", "variety", "crop", "germination", "sown"] as const;
export type TestSort = (typeof testSorts)[number];

export const testsAPage = 100;

/** What the address of the list says. Anything that is not understood falls back to its default: an old address still opens. */
export const TestListQuerySchema = z.object({
  q: z.string().trim().max(200).catch(""),
  sort: z.enum(testSorts).catch("set-up"),
  order: z.enum(["up", "down"]).catch("down"),
  page: z.coerce.number().int().min(1).max(100_000).catch(1),
});
export type TestListQuery = z.infer<typeof TestListQuerySchema>;

type Params = Readonly<Record<string, string | readonly string[] | undefined>>;

/** Reads the address; of a parameter that stands twice the first counts. */
export function readTestListQuery(params: Params): TestListQuery {
  const single = Object.fromEntries(
    Object.entries(params).map(([key, value]) => [key, typeof value === "string" ? value : value?.[0]]),
  );
  const order = single.order ?? (single.sort && single.sort !== "set-up" ? "up" : "down");
  return TestListQuerySchema.parse({ q: "", ...single, order });
}

/** The address for a query, what is default left out. */
export function testListAddress(query: TestListQuery, changed: Partial<TestListQuery> = {}): string {
  const wanted = { ...query, ...changed };
  const params = new URLSearchParams();
  if (wanted.q !== "") params.set("q", wanted.q);
  if (wanted.sort !== "set-up") params.set("sort", wanted.sort);
  if (wanted.order !== (wanted.sort === "set-up" ? "down" : "up")) params.set("order", wanted.order);
  if (wanted.page !== 1) params.set("page", String(wanted.page));
  const text = params.toString();
  return text === "" ? "/tests" : `/tests?${text}`;
}
