import type { Prisma } from "@/lib/db";
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
  ledger: true,
  tests: { select: { id: true }, take: 1 },
  warnings: { where: { closedOn: null }, select: { reason: true } },
} satisfies Prisma.LotSelect;

export type LotRead = Prisma.LotGetPayload<{ select: typeof lotInHandSelect }>;

export function lotInHand({ tests, warnings, ...lot }: LotRead): LotInHand {
  return { ...lot, tested: tests.length > 0, openWarnings: warnings.map((each) => each.reason) };
}
