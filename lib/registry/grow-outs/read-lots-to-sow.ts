import { type Database, readTogether, type Selection, sql } from "@/lib/db";
import type { Settings } from "@/lib/schemas/settings";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import { figuresOfVariety, type LotFigures } from "../figures/read-figures";
import { objectionsTo } from "../lots/objections";
import { type Holding, holdingsOfRows, holdingsOfVariety, wordsOfVariety } from "../reserve/read-holdings";
import { reserveOfVariety } from "../reserve/reserve-of-variety";
import type { LotToSow, ReserveHeld } from "./sowing-plan";
import { ownValuesOfVariety, varietyOfPlan, varietySelection } from "./variety-of-plan";

interface Question {
  readonly settings: Settings;
  readonly today: CivilDay;
}

/**
 * All lots of a variety as they could be sown, the newest first, each with what its holder keeps back of the variety. Four statements where
 * the figures of its crop are at hand; no lot where there is no such variety.
 */
export async function readLotsToSow(
  db: Database,
  varietyId: string,
  { settings, today }: Question,
): Promise<LotToSow[]> {
  const found = await readTogether(db, {
    varieties: varietySelection(varietyId),
    own: ownValuesOfVariety(varietyId),
    against: againstSelection(varietyId),
    holdings: holdingsOfVariety(varietyId),
    words: wordsOfVariety(varietyId),
  });
  const [row] = found.varieties;
  if (!row) return [];
  const { variety, crop } = varietyOfPlan(row, found.own);
  const figures = await figuresOfVariety(db, varietyId);
  const holdings = holdingsOfRows(found.holdings, figures);
  const { words } = found;
  const against = againstByLot(found.against);
  const perGram = { min: crop.seedsPerGramMin, max: crop.seedsPerGramMax };
  const reserves = new Map<string | null, ReserveHeld>();
  const reserveOf = (holderId: string | null): ReserveHeld => {
    const before = reserves.get(holderId);
    if (before) return before;
    const kept = reserveOfVariety({
      holderId,
      holdings,
      words,
      varietyPlantsWanted: variety.plantsWanted,
      cropPlantsMin: crop.plantsMin,
      seedsPerGram: perGram,
      usualLifeYears: crop.seedLifeYearsMax,
      settings,
      today,
    });
    const good = kept.good.map(({ lot }) => lot.id);
    const made = { varietyId, holderId, seeds: kept.reserve?.seeds ?? null, onHand: kept.onHand, good };
    reserves.set(holderId, made);
    return made;
  };
  return [...holdings].sort(newestFirst).map((lot): LotToSow => {
    const { id, number, year, holderId, holder, thousandSeedGrams, treatment, gramsOnHand, lastTest } = lot;
    return {
      ...{ id, number, year, holderId, holder, thousandSeedGrams, treatment, varietyId, perGram },
      variety: variety.name,
      grams: gramsOnHand,
      test: testOf(lastTest),
      objections: against.get(id)?.objections(lot) ?? [],
      identityGrade: against.get(id)?.identityGrade ?? null,
      treatmentSubstance: against.get(id)?.substance ?? null,
      reserve: reserveOf(holderId),
    };
  });
}

/** By the last day that its harvest can mean, the newest first; those without a year last. */
function newestFirst(a: Holding, b: Holding): number {
  const [one, other] = [a.yearLast ?? "", b.yearLast ?? ""];
  return one === other ? (a.number < b.number ? -1 : 1) : one < other ? 1 : -1;
}

function testOf(test: LotFigures["lastTest"]): LotToSow["test"] {
  return test && { testId: test.testId, date: test.date, sown: test.sown, normal: test.normal };
}

interface AgainstRow {
  readonly id: string;
  readonly kind: string;
  readonly origin: string | null;
  readonly identityGrade: string | null;
  readonly statusReason: string | null;
  readonly substance: string | null;
  readonly warning: string | null;
}

/** What is written of each lot of a variety that can stand against sowing it, a row an open warning. */
function againstSelection(varietyId: string): Selection<AgainstRow> {
  return {
    columns: {
      ...{ id: "text", kind: "text", origin: "text", identityGrade: "text" },
      ...{ statusReason: "text", substance: "text", warning: "text" },
    },
    rows: sql`
      SELECT l."id", l."kind", l."origin", l."identityGrade", l."statusReason", l."treatmentSubstance" AS "substance", w."reason" AS "warning"
      FROM "Lot" m JOIN "Lot" l ON l."id" = COALESCE(m."sameAsId", m."id") LEFT JOIN "Warning" w ON w."lotId" = m."id" AND w."closedOn" IS NULL
      WHERE l."varietyId" = ${varietyId} ORDER BY l."id", w."id"`,
  };
}

function againstByLot(lots: readonly AgainstRow[]) {
  const warnings = new Map<string, string[]>();
  for (const { id, warning } of lots) {
    if (warning !== null) warnings.set(id, [...(warnings.get(id) ?? []), warning]);
  }
  return new Map(
    lots.map(({ id, kind, origin, identityGrade, statusReason, substance }) => [
      id,
      {
        substance,
        identityGrade,
        objections: (lot: Holding) =>
          objectionsToSowing({
            ...{ kind, origin, statusReason },
            number: lot.number,
            status: lot.status,
            treatment: lot.treatment,
            treatmentSubstance: substance,
            tested: lot.lastTest !== null,
            openWarnings: warnings.get(id) ?? [],
          }).map((each) => each.words),
      },
    ]),
  );
}

/**
 * What stands against sowing a lot: as against parting it, but for treated seed, which is meant to be sown, and an empty jar, of which the
 * ledger speaks.
 */
export function objectionsToSowing(lot: Parameters<typeof objectionsTo>[1]): ReturnType<typeof objectionsTo> {
  return objectionsTo("split", lot).filter(({ code }) => code !== "treated" && code !== "no-seed-left");
}
