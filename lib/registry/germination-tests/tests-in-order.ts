import type { Client, Prisma } from "@/lib/db";
import { foldName } from "@/lib/registry/names/fold-name";
import type { TestColumn, TestListQuery } from "@/lib/schemas/germination-test/list-query";

type Where = Prisma.GerminationTestWhereInput;
type Sort = TestListQuery["sort"];
interface Part {
  readonly skip?: number;
  readonly take?: number;
}

/** Every word must stand in the test's name, the lot's number, the variety's or the crop's name. */
export function searchedTests(text: string): Where {
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

/** Ids of the tests that are left by a search, in their order, a part of them. */
export async function testsInOrder(db: Client, where: Where, sort: Sort, part: Part): Promise<string[]> {
  if (sort.key === "germination" || sort.key === "sown") return byCounts(db, where, sort, part);
  const rows = await db.germinationTest.findMany({ where, orderBy: inOrder(sort), select: { id: true }, ...part });
  return rows.map((row) => row.id);
}

type Order = Prisma.GerminationTestOrderByWithRelationInput[];

function inOrder({ key, down }: Sort): Order {
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

/** Orders by what was counted, from the sums of all tests that are left: two statements. What was not counted stands last. */
async function byCounts(db: Client, where: Where, { key, down }: Sort, part: Part): Promise<string[]> {
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
  return ids.slice(part.skip ?? 0, part.take === undefined ? undefined : (part.skip ?? 0) + part.take);
}

function byValue(a: number | null, b: number | null, way: number): number {
  if (a === null || b === null) return a === b ? 0 : a === null ? 1 : -1;
  return way * (a - b);
}
