import { type Database, readTogether } from "@/lib/db";
import type { Settings } from "@/lib/schemas/settings";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import type { Assumption } from "@/lib/science/outcome";
import type { SowingCount } from "@/lib/science/sowing/sowing-count";
import { claimsOfLot, type StandingClaim, standingClaims } from "../claims/read-claims";
import type { LastTest, LotFigures } from "../figures/read-figures";
import type { TestOfLot } from "../germination-tests/tests-of-lot";
import { type Balance, balanceOf } from "../ledger/balance";
import { entryWarnings } from "../ledger/entry-warnings";
import type { GiveVerdict } from "../reserve/may-give";
import type { ContainerOfLot } from "../reserve/read-holdings";
import type { ReserveOfVariety } from "../reserve/reserve-of-variety";
import { sowingFor } from "../reserve/sowing-for";
import { founderLinesOf, type LineageStanding, lineageStanding } from "../varieties/lineage-standing";
import type { Forecast, NoForecast } from "./how-long-good";
import type { SeedCount } from "./live-seeds";
import { type OtherRecord, otherRecordsOf } from "./other-records";
import type { LotHead } from "./read-head";
import { readJar } from "./read-jar";
import { type KinOfLot, kinOfLot } from "./read-kin";
import { type LedgerRow, ledgerOfLot } from "./read-ledger";
import { type NoteOfLot, notesOfLot } from "./read-notes";

/** The seeds to sow of this lot for the plants that are wanted. */
export interface WhatToSow {
  readonly plants: number;
  /** the variety, the crop, or the person who asks */
  readonly from: "variety" | "crop" | "asked";
  /** null where the lot was never tested, or too few of it germinate for any number to do */
  readonly sowing: SowingCount | null;
  /** the same in grams, by the lot's own seed weight */
  readonly grams: number | null;
}

/** Everything that the page of one lot shows. Null is not known. */
export interface LotRead {
  readonly lot: LotHead;
  readonly figures: LotFigures | null;
  readonly standing: LineageStanding;
  readonly seeds: SeedCount | null;
  readonly live: SeedCount | null;
  /** the last test is older than the usual life of the seed: what lived then is only assumed to live */
  readonly aged: boolean;
  readonly balance: Balance<LedgerRow>;
  /** all entries in the order of entry, also those that count no more */
  readonly entries: readonly LedgerRow[];
  readonly warnings: ReadonlyMap<string, readonly Assumption[]>;
  readonly tests: readonly TestOfLot[];
  /** of a lot that was split off and never tested itself: the last test of the seed it was parted from */
  readonly testedBefore: { readonly lotId: string; readonly number: string; readonly test: LastTest } | null;
  readonly kin: readonly KinOfLot[];
  /** what is told of where it is from, and the claims of others that name it */
  readonly claims: readonly StandingClaim[];
  /** records that are read as this lot */
  readonly otherRecords: readonly OtherRecord[];
  /** effective size of the grow-out behind each lot of the variety, by lot id; null not known */
  readonly effectiveSizes: ReadonlyMap<string, number | null>;
  readonly containers: readonly ContainerOfLot[];
  readonly notes: readonly NoteOfLot[];
  readonly reserve: ReserveOfVariety;
  readonly give: GiveVerdict;
  readonly keeping: Forecast | { readonly why: NoForecast };
  readonly sow: WhatToSow | null;
}

/**
 * Reads one lot with all that its page says. `plants`: how many plants are wanted, where somebody asks for another number than the
 * variety's. Four statements where the figures of its crop are at hand; null where there is no such lot.
 */
export async function readLot(
  db: Database,
  lotId: string,
  { settings, today, plants = null }: { settings: Settings; today: CivilDay; plants?: number | null },
): Promise<LotRead | null> {
  const jar = await readJar(db, lotId, { settings, today });
  if (!jar) return null;
  const { lot, figures, allFigures, holdings, tests, reserve } = jar;
  const { entries, notes, kin, claims, otherRecords } = await readTogether(db, {
    entries: ledgerOfLot(lot.id),
    notes: notesOfLot(lot.id),
    kin: kinOfLot(lot.id),
    claims: claimsOfLot(lot.id),
    otherRecords: otherRecordsOf(lot.id),
  });
  const balance = balanceOf(entries, lot.thousandSeedGrams);
  const openWarning = notes.some((note) => note.what === "warning" && note.closed === null);
  return {
    lot,
    figures,
    standing: figures ? lineageStanding(figures, lot.crop.matingSystem, founderLinesOf(holdings)) : "plants not known",
    seeds: jar.seeds,
    live: jar.live,
    aged: jar.aged,
    balance,
    entries,
    warnings: entryWarnings(balance, lot, today),
    tests,
    testedBefore: figures?.lastTest ? null : testBeforeSplit(kin, allFigures),
    kin,
    claims: standingClaims(claims),
    otherRecords,
    effectiveSizes: new Map([...allFigures].map(([id, each]) => [id, each.effectiveSize])),
    containers: holdings.find((each) => each.id === lot.id)?.containers ?? [],
    notes,
    reserve,
    give: jar.giveVerdict(openWarning),
    keeping: jar.keeping,
    sow: whatToSow(lot, figures, reserve, plants),
  };
}

function testBeforeSplit(kin: readonly KinOfLot[], figures: ReadonlyMap<string, LotFigures>): LotRead["testedBefore"] {
  const from = kin.find((each) => each.kinship === "split from");
  const test = figures.get(from?.lotId ?? "")?.lastTest;
  return from?.lotId && from.number && test ? { lotId: from.lotId, number: from.number, test } : null;
}

function whatToSow(
  lot: LotHead,
  figures: LotFigures | null,
  { wanted }: ReserveOfVariety,
  asked: number | null,
): WhatToSow | null {
  const plants = asked ?? wanted?.plants ?? null;
  if (plants === null) return null;
  const from = asked !== null && asked !== wanted?.plants ? "asked" : (wanted?.from ?? "asked");
  const test = figures?.lastTest ?? null;
  const sowing = sowingFor(test, plants);
  const grams = sowing && lot.thousandSeedGrams !== null ? (sowing.seeds * lot.thousandSeedGrams) / 1000 : null;
  return { plants, from, sowing, grams };
}
