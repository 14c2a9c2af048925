import type { Database } from "@/lib/db";
import { type TestListQuery, testsAPage } from "@/lib/schemas/germination-test/list-query";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import { type ListedTest, listedTests } from "./listed-tests";
import { asRunning, type RunningTest, setUpLately } from "./running-tests";
import { searchedTests, testsInOrder } from "./tests-in-order";

export interface TestList {
  readonly tests: readonly ListedTest[];
  /** tests that the search leaves, on all pages */
  readonly found: number;
  /** tests in the registry */
  readonly all: number;
  /** tests that wait for their last count, whatever is searched for */
  readonly running: readonly RunningTest[];
}

/** A page of the list of germination tests, and the tests that lie in the cloth now. At most seven statements. */
export async function listGerminationTests(db: Database, query: TestListQuery, today: CivilDay): Promise<TestList> {
  const where = searchedTests(query.filter);
  const all = await db.read.germinationTest.count();
  const found = query.filter === "" ? all : await db.read.germinationTest.count({ where });
  const part = { skip: (query.page - 1) * testsAPage, take: testsAPage };
  const onPage = await testsInOrder(db.read, where, query.sort, part);
  const lately = await setUpLately(db.read, today);
  const listed = await listedTests(db, [...new Set([...onPage, ...lately])]);
  const of = (ids: readonly string[]) => ids.flatMap((id) => listed.get(id) ?? []);
  return { tests: of(onPage), found, all, running: asRunning(of(lately), today) };
}

/** All tests that a query leaves, in its order, for a file. */
export async function allGerminationTests(db: Database, query: TestListQuery): Promise<ListedTest[]> {
  const where = searchedTests(query.filter);
  const ids = await testsInOrder(db.read, where, query.sort, {});
  const listed = await listedTests(db, null);
  return ids.flatMap((id) => listed.get(id) ?? []);
}
