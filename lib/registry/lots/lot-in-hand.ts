import type { Prisma } from "@/lib/db";
import { summedUp, type TestOfLot } from "../germination-tests/tests-of-lot";
import type { LotInHand } from "./objections";

/** What must be read of a lot before seed is taken out of its jar. */
export const lotInHandSelect = {
  id: true,
  number: true,
  varietyId: true,
  strainId: true,
  holderId: true,
  kind: true,
  origin: true,
  status: true,
  statusReason: true,
  treatment: true,
  treatmentSubstance: true,
  year: true,
  yearFirst: true,
  yearLast: true,
  yearWords: true,
  thousandSeedGrams: true,
  isolationGrade: true,
  isolationReasons: true,
  identityGrade: true,
  howSure: true,
  strain: { select: { id: true, name: true, relation: true } },
  variety: { select: { id: true, name: true, crop: { select: { id: true, commonName: true, clonal: true } } } },
  ledger: true,
  tests: {
    orderBy: [{ onFirst: "asc" }, { id: "asc" }],
    include: { replicates: { orderBy: { id: "asc" }, include: { counts: { orderBy: { id: "asc" } } } } },
  },
  warnings: { where: { closedOn: null }, select: { reason: true } },
} satisfies Prisma.LotSelect;

export type LotRead = Prisma.LotGetPayload<{ select: typeof lotInHandSelect }>;

export function lotInHand({ warnings, ...lot }: LotRead): LotInHand {
  return { ...lot, tested: lastCounted(lot) !== null, openWarnings: warnings.map((each) => each.reason) };
}

/** What the last test that was counted says: share, with its exact 95 % interval. Null where nothing was counted. */
export function lastCounted({ tests }: Pick<LotRead, "tests">): TestOfLot["germination"] {
  return tests.map((test) => summedUp(test).germination).findLast((germination) => germination !== null) ?? null;
}
