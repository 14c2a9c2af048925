import { compareCodePoints } from "@/lib/science/code-point-order";
import { compareDays } from "@/lib/science/dates/civil-day";
import { atOnce, eachInSteps, type Steps } from "@/lib/science/in-steps";
import { accepted, type Outcome } from "@/lib/science/outcome";
import { grouped } from "../change-set/grouped";
import { intervalOfCounts } from "../germination-tests/interval-of-counts";
import { ledgerBalance } from "./ledger-balance";
import { type LineageOfRecords, type LotFigures, lineageOfRecords } from "./lineage-of-records";
import type { FigureRecords, LedgerRecord, LotRecord, TestRecord } from "./records";
import type { SpanOfLot } from "./span-of-lot";

/** A germination test in one line: share of normal seedlings with its exact 95 % interval. */
export interface TestFigure {
  readonly test: string;
  readonly date: string;
  readonly germination: number;
  readonly low: number;
  readonly high: number;
}

/** All that is worked out of one lot, in the order and words in which it is printed. */
export interface LotFigure extends LotFigures {
  readonly lot: string;
  readonly variety: string;
  readonly holder: string | null;
  readonly gramsOnHand: number | null;
  /** lot numbers of the founders, in code-point order */
  readonly founders: readonly string[];
  /** the latest test */
  readonly lastTest: TestFigure | null;
  /** one sentence for each default that moves a figure; put together when it is asked for, since few lots' are */
  readonly assumed: readonly string[];
  /** what the records allow where its line is not known throughout; null where the figures are points. Not enumerated: a line of `figures` prints points alone */
  readonly span: SpanOfLot | null;
}

export interface AllRecords extends FigureRecords {
  /** in the order of entry */
  readonly ledger: readonly LedgerRecord[];
  /** in the order of entry */
  readonly tests: readonly TestRecord[];
}

/**
 * The figures of lots, in code-point order of their numbers; of all lots, or of those with these ids.
 * Refused: what `lineageOfRecords` refuses.
 */
export function figuresOfRecords(records: AllRecords, only?: ReadonlySet<string>): Outcome<LotFigure[]> {
  const followed = lineageOfRecords(records);
  return followed.ok ? accepted(atOnce(figuresByLineage(records, followed.value, only))) : followed;
}

/** The same, once the lineage is worked out; laid down now and then. */
export function* figuresByLineage(
  records: AllRecords,
  lineage: LineageOfRecords,
  only?: ReadonlySet<string>,
): Steps<LotFigure[]> {
  const varieties = new Map(records.varieties.map(({ id, name }) => [id, name]));
  const numbers = new Map(records.lots.map(({ id, number }) => [id, number]));
  const ledger = grouped(records.ledger, ({ lotId }) => lotId);
  const tests = grouped(records.tests, ({ lotId }) => lotId);
  const wanted = only === undefined ? records.lots : records.lots.filter(({ id }) => only.has(id));
  // Many lots come from the same founders: their numbers are put in order once.
  const founders = new Map<readonly string[], readonly string[]>();
  const foundersOf = (lotId: string) => {
    const ids = lineage.foundersOf(lotId);
    const known = founders.get(ids) ?? ids.map((id) => numbers.get(id) ?? "").sort(compareCodePoints);
    founders.set(ids, known);
    return known;
  };
  const figureOf = (lot: LotRecord): LotFigure =>
    withAssumed(lineage, lot.id, {
      lot: lot.number,
      variety: varieties.get(lot.varietyId) ?? "",
      holder: lot.holder,
      gramsOnHand: ledgerBalance(ledger.get(lot.id) ?? [], lot.thousandSeedGrams),
      ...(lineage.figures.get(lot.id) ?? nothingKnown),
      founders: foundersOf(lot.id),
      lastTest: lastTestOf(tests.get(lot.id) ?? []),
    });
  const figures = yield* eachInSteps(wanted, figureOf);
  yield;
  return figures.sort((one, other) => compareCodePoints(one.lot, other.lot));
}

/** Apart from the rest, so that figures that are kept do not keep the ledgers and tests that they were worked out from. */
function withAssumed(lineage: LineageOfRecords, lotId: string, rest: Omit<LotFigure, "assumed" | "span">): LotFigure {
  const assumed = () => lineage.assumedFor(lotId).map(({ text }) => text);
  const withSpan = Object.defineProperty(rest as LotFigure, "span", {
    value: lineage.spanOf(lotId),
    enumerable: false,
  });
  return Object.defineProperty(withSpan, "assumed", { enumerable: true, get: assumed });
}

const nothingKnown: LotFigures = {
  effectiveSize: null,
  inbreeding: null,
  coancestry: null,
  diversityRetained: null,
  nativeDiversityRetained: null,
  foreignAncestry: null,
  generations: null,
};

/**
 * The latest test by the first possible day of its date, of equals the one entered later; all its replicates and days
 * together, with the exact 95 % interval. Null where nothing was tested.
 */
export function lastTestOf(tests: readonly TestRecord[]): TestFigure | null {
  let last: TestRecord | null = null;
  for (const test of tests) if (last === null || compareDays(test.first, last.first) >= 0) last = test;
  if (last === null) return null;
  const sown = last.replicates.reduce((sum, replicate) => sum + replicate.sown, 0);
  const normal = last.replicates.reduce((sum, replicate) => sum + replicate.normal, 0);
  if (sown === 0) return null;
  const { low, high } = intervalOfCounts(normal, sown);
  return { test: last.name, date: last.date, germination: normal / sown, low, high };
}
