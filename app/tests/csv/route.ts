import { current } from "@/app/_session/current";
import { allGerminationTests } from "@/lib/registry/germination-tests/list-germination-tests";
import { readTestListQuery } from "@/lib/schemas/germination-test/list-query";
import { testsCsv } from "./tests-csv";

/** The tests that the list's address leaves, in its order, all pages. */
export async function GET(request: Request): Promise<Response> {
  const { db } = await current();
  const query = readTestListQuery(Object.fromEntries(new URL(request.url).searchParams));
  const tests = await allGerminationTests(db, query);
  return new Response(testsCsv(tests), {
    headers: {
      "content-type": "text/csv; charset=utf-8",
      "content-disposition": 'attachment; filename="germination-tests.csv"',
    },
  });
}
