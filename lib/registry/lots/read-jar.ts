import { type Database, readTogether } from "@/lib/db";
import type { Settings } from "@/lib/schemas/settings";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import { dryingsSelection, readingsSelection } from "../drying/read-drying";
import { figuresOfVariety, type LotFigures } from "../figures/read-figures";
import type { TestOfLot } from "../germination-tests/tests-of-lot";
import { type GiveVerdict, mayGive } from "../reserve/may-give";
import { type Holding, holdingsOfRows, holdingsOfVariety, wordsOfVariety } from "../reserve/read-holdings";
import { type ReserveOfVariety, reserveOfVariety } from "../reserve/reserve-of-variety";
import { ownTableSelection, validOwnValues } from "../tables/own-table-values";
import { type Forecast, howLongGood, type NoForecast } from "./how-long-good";
import { liveSeeds, type SeedCount, seedsIn } from "./live-seeds";
import { type LotHead, readHead } from "./read-head";
import { testsOfLot, testsSummedUp } from "./read-tests";
import { storeOfLot } from "./store-of-lot";
import { testedTooLongAgo } from "./test-age";

/** A jar with what is in it, how long that is good, and what its holder keeps back. Null is not known. */
export interface JarRead {
  readonly lot: LotHead;
  readonly figures: LotFigures | null;
  /** of all lots of the variety */
  readonly allFigures: ReadonlyMap<string, LotFigures>;
  readonly holdings: readonly Holding[];
  readonly tests: readonly TestOfLot[];
  readonly seeds: SeedCount | null;
  readonly live: SeedCount | null;
  /** the last test is older than the usual life of the seed: what lived then is only assumed to live */
  readonly aged: boolean;
  readonly reserve: ReserveOfVariety;
  readonly keeping: Forecast | { readonly why: NoForecast };
  /** may seed be given; `openWarning`: a warning on the lot that nobody has closed */
  readonly giveVerdict: (openWarning: boolean) => GiveVerdict;
}

/** Reads a jar. Three statements where the figures of its crop are at hand; null where there is no such lot. */
export async function readJar(
  db: Database,
  lotId: string,
  { settings, today }: { settings: Settings; today: CivilDay },
): Promise<JarRead | null> {
  const lot = await readHead(db.read, lotId);
  if (!lot) return null;
  const allFigures = await figuresOfVariety(db, lot.varietyId);
  const { words, ...rows } = await readTogether(db, {
    holdings: holdingsOfVariety(lot.varietyId),
    words: wordsOfVariety(lot.varietyId),
    tests: testsOfLot(lot.id),
    readings: readingsSelection(lot.id),
    dryings: dryingsSelection(lot.id),
    own: ownTableSelection(["viability-constants", "oil-content"]),
  });
  const holdings = holdingsOfRows(rows.holdings, allFigures);
  const tests = testsSummedUp(rows.tests);
  const figures = allFigures.get(lot.id) ?? null;
  const { crop } = lot;
  const perGram = { min: crop.seedsPerGramMin, max: crop.seedsPerGramMax };
  const grams = figures?.gramsOnHand ?? null;
  const lastTest = figures?.lastTest ?? null;
  const seeds = seedsIn(grams, lot.thousandSeedGrams, perGram);
  const reserve = reserveOfVariety({
    holderId: lot.holderId,
    holdings,
    words,
    varietyPlantsWanted: lot.plantsWanted,
    cropPlantsMin: crop.plantsMin,
    seedsPerGram: perGram,
    usualLifeYears: crop.seedLifeYearsMax,
    settings,
    today,
  });
  const containers = holdings.find((each) => each.id === lot.id)?.containers ?? [];
  const store = storeOfLot({ ...rows, crop, containers, own: validOwnValues(rows.own) });
  const keeping = howLongGood({ tests, ...lot, store, threshold: settings.renewalPlan });
  const likelyBelow = !("why" in keeping) && keeping.until.likely < today;
  const aged = lastTest !== null && testedTooLongAgo(lastTest, crop.seedLifeYearsMax, today);
  const live = liveSeeds(seeds, lastTest);
  return {
    lot,
    figures,
    allFigures,
    holdings,
    tests,
    seeds,
    live: live && aged ? { ...live, grade: "assumed" } : live,
    aged,
    reserve,
    keeping,
    giveVerdict: (openWarning) =>
      mayGive(
        { lotId: lot.id, status: lot.status, grams, openWarning, tested: lastTest !== null, likelyBelow },
        reserve,
      ),
  };
}
