import type { Client, Database, Prisma } from "@/lib/db";
import { foldName } from "@/lib/registry/names/fold-name";
import { type TestColumn, type TestListQuery, testsAPage } from "@/lib/schemas/germination-test/list-query";
import { summedUp, type TestOfLot } from "./tests-of-lot";

/** A test in the list, with the lot, variety and crop it belongs to. */
export interface ListedTest extends TestOfLot {
  readonly note: string | null;
  readonly lot: { readonly id: string; readonly number: string };
  readonly variety: { readonly id: string; readonly name: string; readonly seedCoat: string | null };
  readonly crop: { readonly key: string; readonly name: string };
}

export interface TestList {
  readonly tests: readonly ListedTest[];
  /** tests that the search leaves, on all pages */
  readonly found: number;
  /** tests in the registry */
  readonly all: number;
}

const surroundings = {
  lot: {
    select: {
      id: true,
      number: true,
      variety: { select: { id: true, name: true, seedCoat: true, crop: { select: { key: true, commonName: true } } } },
    },
  },
  replicates: { orderBy: { id: "asc" as const }, include: { counts: { orderBy: { id: "asc" as const } } } },
};

/** The germination tests that a query leaves, one page of them, or all (for a file). */
export async function listGerminationTests(
  db: Database,
  query: TestListQuery,
  pages: "one" | "all" = "one",
): Promise<TestList> {
  const where = searched(query.filter);
  const [all, found] = await Promise.all([db.read.germinationTest.count(), db.read.germinationTest.count({ where })]);
  const part = pages === "all" ? {} : { skip: (query.page - 1) * testsAPage, take: testsAPage };
  const tests =
    query.sort.key === "germination" || query.sort.key === "sown"
      ? await byCounts(db.read, where, query.sort, part)
      : await stored(db.read, { where, orderBy: inOrder(query.sort), ...part });
  return { tests, found, all };
}

/** Every word must stand in the test's name, the lot's number, the variety's or the crop's name. */
function searched(text: string): Prisma.GerminationTestWhereInput {
  const words = foldName(text).split(" ").filter(Boolean);
  return {
    AND: words.map((word) => ({
      OR: [
        { nameKey: { contains: word } },
        { lot: { numberKey: { contains: word } } },
        { lot: { variety: { nameKey: { contains: word } } } },
        { lot: { variety: { names: { some: { nameKey: { contains: word } } } } } },
        { lot: { variety: { crop: { commonNameKey: { contains: word } } } } },
      ],
    })),
  };
}

type Order = Prisma.GerminationTestOrderByWithRelationInput[];

function inOrder({ key, down }: TestListQuery["sort"]): Order {
  const way = down ? "desc" : "asc";
  const byDate: Order = [{ onFirst: way }, { onLast: way }];
  const orders: Readonly<Partial<Record<TestColumn, Order>>> = {
    test: [{ nameKey: way }],
    lot: [{ lot: { numberKey: way } }],
    variety: [{ lot: { variety: { nameKey: way } } }],
    crop: [{ lot: { variety: { crop: { commonNameKey: way } } } }, { lot: { variety: { nameKey: "asc" } } }],
  };
  return [...(orders[key] ?? byDate), { id: way }];
}

async function stored(db: Client, args: Prisma.GerminationTestFindManyArgs): Promise<ListedTest[]> {
  const rows = await db.germinationTest.findMany({ ...args, include: surroundings });
  return rows.map(({ lot: { variety, ...lot }, ...test }) => ({
    ...summedUp({ ...test, lotId: lot.id }),
    note: test.note,
    lot,
    variety: { id: variety.id, name: variety.name, seedCoat: variety.seedCoat },
    crop: { key: variety.crop.key, name: variety.crop.commonName },
  }));
}

/** Orders by what was counted: the sums of all tests that are left, three statements, then the page of them. Not counted stands last. */
async function byCounts(
  db: Client,
  where: Prisma.GerminationTestWhereInput,
  { key, down }: TestListQuery["sort"],
  part: { skip?: number; take?: number },
): Promise<ListedTest[]> {
  const replicates = await db.testReplicate.findMany({
    where: { test: where },
    select: { id: true, testId: true, sown: true },
  });
  const counts = await db.testCount.groupBy({
    by: ["replicateId"],
    where: { replicate: { test: where }, takenBack: false, replacedBy: null },
    _sum: { normal: true },
  });
  const normalOf = new Map(counts.map((count) => [count.replicateId, count._sum.normal ?? 0]));
  const sums = new Map<string, { sown: number; normal: number | null }>();
  for (const { id, testId, sown } of replicates) {
    const before = sums.get(testId) ?? { sown: 0, normal: null };
    const normal = normalOf.get(id);
    sums.set(testId, {
      sown: before.sown + sown,
      normal: normal === undefined ? before.normal : (before.normal ?? 0) + normal,
    });
  }
  const figureOf = ({ sown, normal }: { sown: number; normal: number | null }) =>
    key === "sown" ? sown : normal === null ? null : normal / sown;
  const way = down ? -1 : 1;
  const ids = [...sums]
    .map(([id, sum]) => ({ id, value: figureOf(sum) }))
    .sort((a, b) => byValue(a.value, b.value, way) || (a.id < b.id ? -way : way))
    .map(({ id }) => id);
  const wanted = ids.slice(part.skip ?? 0, part.take === undefined ? undefined : (part.skip ?? 0) + part.take);
  const onThisPage = part.take === undefined ? where : { id: { in: wanted } };
  const tests = new Map((await stored(db, { where: onThisPage })).map((test) => [test.id, test]));
  return wanted.flatMap((id) => tests.get(id) ?? []);
}

function byValue(a: number | null, b: number | null, way: number): number {
  if (a === null || b === null) return a === b ? 0 : a === null ? 1 : -1;
  return way * (a - b);
}
