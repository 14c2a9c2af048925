import type { Database } from "@/lib/db";

/**
 * The addresses of every page that lists records or shows one with what belongs to it, and the lots in whose ledgers the bench writes: those
 * of the same crop, but not the one that is looked at, which would grow longer and longer.
 */
export async function benchPages(db: Database): Promise<{ lotIds: string[]; paths: string[] }> {
  const variety = await db.read.variety.findFirstOrThrow({ orderBy: { id: "asc" } });
  const lot = await db.read.lot.findFirstOrThrow({
    where: { varietyId: variety.id, kind: "harvest" },
    orderBy: { id: "desc" },
  });
  const test = await db.read.germinationTest.findFirstOrThrow({ orderBy: { id: "asc" } });
  const growOut = await db.read.growOut.findFirstOrThrow({ orderBy: { id: "asc" } });
  const of = (page: string, id: string, parts: readonly string[]) => parts.map((part) => `${page}/${id}${part}`);
  const paths = [
    "/season",
    "/season?rule=test-overdue",
    "/season?left=tests",
    "/varieties",
    ...of("/varieties", variety.id, ["", "/traits", "/lineage", "/diversity", "/grown-otherwise", "/restore"]),
    "/lots",
    "/lots?filter=bench%207",
    "/lots/new",
    `/lots/blend?variety=${variety.id}`,
    ...of("/lots", lot.id, ["", "/history", "/give", "/split"]),
    "/tests",
    "/tests/new",
    `/tests/${test.id}`,
    "/grow-outs",
    "/grow-outs/new",
    ...of("/grow-outs", growOut.id, [
      "",
      "/sow",
      "/count",
      "/rogue",
      "/flowering",
      "/plants",
      "/harvest",
      "/neighbours",
    ]),
    "/sharing",
    "/sharing/given",
    "/sharing/take-in",
    `/sharing/holders/${variety.id}`,
    "/stewards",
    "/crops",
    "/type-in",
    `/type-in/${variety.id}`,
    "/search?q=bench",
    "/history",
    "/field/came-home",
    "/settings",
  ];
  const others = await db.read.lot.findMany({
    where: { variety: { cropId: variety.cropId }, id: { not: lot.id } },
    orderBy: { id: "asc" },
    select: { id: true },
  });
  return { lotIds: others.map((each) => each.id), paths };
}
