import { type Database, readRows, type Selection, sql } from "@/lib/db";
import { exactInterval } from "@/lib/science/binomial/exact-interval";
import type { Interval } from "@/lib/science/binomial/interval";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import { type GerminationConditions, germinationConditions } from "@/lib/science/germination/germination-conditions";
import { type GerminationTest, germinationTest, USUAL_CONFIDENCE } from "@/lib/science/germination/germination-test";
import { type PublishedTolerance, publishedTolerance } from "@/lib/science/germination/published-tolerance";
import type { ReplicateCounts } from "@/lib/science/germination/test-counts";
import { type VegetableMinimum, vegetableMinimum } from "@/lib/science/germination/vegetable-minimum";
import { ownTableValues } from "../tables/own-table-values";
import { type Compared, comparedWithEarlier } from "./compare-with-earlier";
import { countsTakenBack, type StandingCount, type StoredCount, standingCounts } from "./standing-counts";
import { type TestTotals, testTotals } from "./test-totals";
import { type StoredTest, storedTestsOfLot, summedUp, type TestOfLot } from "./tests-of-lot";
import { type TestWarning, warningsOfTest } from "./warnings-of-test";

export interface ReadReplicate {
  readonly id: string;
  readonly name: string;
  readonly sown: number;
  readonly counts: readonly StandingCount[];
  readonly takenBack: readonly StoredCount[];
  readonly totals: TestTotals;
  readonly exact: Interval | null;
}

/** A germination test with all that its page says of it. */
export interface ReadTest {
  readonly test: Omit<StoredTest, "replicates">;
  readonly lot: LotOfTest;
  readonly replicates: readonly ReadReplicate[];
  readonly totals: TestTotals;
  /** null where nothing was counted yet */
  readonly result: GerminationTest | null;
  readonly compared: Compared;
  /** the published table's word on replicates of 100; null for any other plan */
  readonly published: PublishedTolerance | null;
  /** how an official test of the crop is set up, for orientation; null where the list has none */
  readonly conditions: GerminationConditions | null;
  /** the line for seed in trade, to be held against normal seedlings and hard seed together */
  readonly minimum: VegetableMinimum | null;
  /** all tests of the lot, this one among them, in the order of their dates */
  readonly testsOfLot: readonly TestOfLot[];
  /** what a person should look at again */
  readonly warnings: readonly TestWarning[];
  /** ids of the test, its replicates and all their counts, also those that count no more: for its history */
  readonly ids: readonly string[];
  /** the change set that wrote it down; null where the history does not reach so far */
  readonly recordedIn: { readonly id: string; readonly at: string; readonly actor: string } | null;
}

/** One test, its lot and the lot's other tests. `standard` is the share of normal seedlings that the lot is held against; `today` the reader's day. */
export async function readGerminationTest(
  db: Database,
  testId: string,
  standard: number,
  today: CivilDay | null = null,
): Promise<ReadTest | null> {
  const found = await whoseTest(db, testId);
  if (!found) return null;
  const { recordedIn } = found;
  const [lot, stored, ownValues] = await Promise.all([
    lotOfTest(db, found.lotId),
    storedTestsOfLot(db.read, found.lotId),
    ownTableValues(db),
  ]);
  const own = stored.find((each) => each.id === testId);
  if (!lot || !own) return null;
  const { replicates, ...test } = own;
  const totals = testTotals(own);
  const testsOfLot = stored.map(summedUp);
  const counts = replicates.map(countsForScience);
  const result = totals.counted ? germinationTest({ replicates: counts, standard }) : null;
  const cropKey = lot.variety.crop.key;
  return {
    test,
    lot,
    replicates: replicates.map(readReplicate),
    ids: idsOfTest(own),
    totals,
    result: result?.ok ? result.value : null,
    compared: comparedWithEarlier(testsOfLot, testId),
    published: totals.stage === "final" ? publishedTolerance(counts) : null,
    conditions: germinationConditions(cropKey, ownValues),
    minimum: vegetableMinimum(cropKey, ownValues),
    testsOfLot,
    warnings: warningsOfTest({
      on: { text: test.on, first: test.onFirst, last: test.onLast },
      basis: test.basis,
      lot,
      otherBases: testsOfLot.filter((each) => each.id !== testId).map((each) => each.basis),
      today,
    }),
    recordedIn,
  };
}

/** The lot of a test and the change set that wrote the test down, in one statement; null where there is no such test. */
async function whoseTest(
  db: Database,
  testId: string,
): Promise<{ readonly lotId: string; readonly recordedIn: ReadTest["recordedIn"] } | null> {
  const [found] = await db.read.$queryRaw<
    { lotId: string; changeSetId: string | null; at: string | null; actor: string | null }[]
  >(sql`
    SELECT t."lotId", s."id" AS "changeSetId", s."at", s."actor" FROM "GerminationTest" t
    LEFT JOIN "Change" c ON c."recordId" = t."id" AND c."tableName" = 'GerminationTest' AND c."action" = 'create'
    LEFT JOIN "ChangeSet" s ON s."id" = c."changeSetId"
    WHERE t."id" = ${testId} ORDER BY c."id" DESC LIMIT 1`);
  if (!found) return null;
  const { changeSetId: id, at, actor } = found;
  const recordedIn = id === null || at === null || actor === null ? null : { id, at, actor };
  return { lotId: found.lotId, recordedIn };
}

/** The lot that a test belongs to, with its variety and crop. */
export interface LotOfTest {
  readonly id: string;
  readonly number: string;
  readonly kind: string;
  readonly year: string | null;
  readonly yearFirst: string | null;
  readonly treatment: string | null;
  readonly treatmentSubstance: string | null;
  readonly status: string | null;
  readonly thousandSeedGrams: number | null;
  readonly variety: {
    readonly id: string;
    readonly name: string;
    readonly seedCoat: string | null;
    readonly crop: {
      readonly key: string;
      readonly commonName: string;
      readonly latinName: string | null;
      readonly cautions: string | null;
      readonly dryStorage: boolean;
    };
  };
}

type LotSql = Omit<LotOfTest, "variety"> &
  LotOfTest["variety"]["crop"] & {
    readonly varietyId: string;
    readonly name: string;
    readonly seedCoat: string | null;
  };

const lotOf = (lotId: string): Selection<LotSql> => ({
  columns: {
    ...{ id: "text", number: "text", kind: "text", year: "text", yearFirst: "text", treatment: "text" },
    ...{ treatmentSubstance: "text", status: "text", thousandSeedGrams: "number", varietyId: "text", name: "text" },
    ...{ seedCoat: "text", key: "text", commonName: "text", latinName: "text", cautions: "text", dryStorage: "flag" },
  },
  rows: sql`
    SELECT l."id", l."number", l."kind", l."year", l."yearFirst", l."treatment", l."treatmentSubstance", l."status", l."thousandSeedGrams",
      v."id" AS "varietyId", v."name", v."seedCoat", c."key", c."commonName", c."latinName", c."cautions", c."dryStorage"
    FROM "Lot" l JOIN "Variety" v ON v."id" = l."varietyId" JOIN "Crop" c ON c."id" = v."cropId"
    WHERE l."sameAsId" IS NULL AND (l."id" = ${lotId} OR l."id" = (SELECT o."sameAsId" FROM "Lot" o WHERE o."id" = ${lotId}))`,
});

/** The lot with this id, of several records of one lot the leading one; null where there is none. One statement. */
export async function lotOfTest(db: Database, lotId: string): Promise<LotOfTest | null> {
  const [found] = await readRows(db, lotOf(lotId));
  if (!found) return null;
  const { varietyId, name, seedCoat, key, commonName, latinName, cautions, dryStorage, ...lot } = found;
  const crop = { key, commonName, latinName, cautions, dryStorage };
  return { ...lot, variety: { id: varietyId, name, seedCoat, crop } };
}

/** Ids of a test, of its replicates and of all their counts, also those that count no more. */
export function idsOfTest({ id, replicates }: Pick<StoredTest, "id" | "replicates">): string[] {
  return [id, ...replicates.flatMap((replicate) => [replicate.id, ...replicate.counts.map((count) => count.id)])];
}

function readReplicate({ id, name, sown, counts }: StoredTest["replicates"][number]): ReadReplicate {
  const totals = testTotals({ finalCountDay: null, replicates: [{ sown, counts }] });
  const exact = totals.counted ? exactInterval(totals.sums.normal ?? 0, sown, USUAL_CONFIDENCE) : null;
  return { id, name, sown, counts: standingCounts(counts), takenBack: countsTakenBack(counts), totals, exact };
}

/** What was not told apart is left out, so that the reading can say so. */
function countsForScience({ sown, counts }: StoredTest["replicates"][number]): ReplicateCounts {
  const { sums } = testTotals({ finalCountDay: null, replicates: [{ sown, counts }] });
  const { normal, ...others } = sums;
  const told = Object.fromEntries(Object.entries(others).filter(([, seeds]) => seeds !== null));
  return { sown, normal: normal ?? 0, ...told };
}
