import { compareCodePoints } from "@/lib/science/code-point-order";
import { compareDays } from "@/lib/science/dates/civil-day";
import { atOnce, eachInSteps, type Steps } from "@/lib/science/in-steps";
import { accepted, type Outcome } from "@/lib/science/outcome";
import { intervalOfCounts } from "../germination-tests/interval-of-counts";
import { ledgerBalance } from "./ledger-balance";
import { type LineageOfRecords, LotFigures, lineageOfRecords } from "./lineage-of-records";
import type { AllRecords, LotRecord, TestRecord } from "./records";
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
  /** its record; not printed */
  readonly tested: TestRecord | null;
  /** one sentence for each default that moves a figure; put together when it is asked for, since few lots' are */
  readonly assumed: readonly string[];
  /** what the records allow where its line is not known throughout; null where the figures are points. A line of `figures` prints points alone */
  readonly span: SpanOfLot | null;
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
    new FigureOfLot(lineage, lot, {
      variety: varieties.get(lot.varietyId) ?? "",
      gramsOnHand: ledgerBalance(records.ledger.get(lot.id) ?? [], lot.thousandSeedGrams),
      founders: foundersOf(lot.id),
      tested: lastTestOf(records.tests.get(lot.id) ?? []),
    });
  const figures = yield* eachInSteps(wanted, figureOf);
  yield;
  return figures.sort((one, other) => compareCodePoints(one.lot, other.lot));
}

/** It keeps the lineage, and not the ledgers and tests that it was worked out from. */
class FigureOfLot extends LotFigures implements LotFigure {
  readonly lot: string;
  readonly variety: string;
  readonly holder: string | null;
  readonly gramsOnHand: number | null;
  readonly founders: readonly string[];
  readonly lastTest: TestFigure | null;
  readonly #lineage: LineageOfRecords;
  readonly #lotId: string;
  readonly #tested: TestRecord | null;

  constructor(
    lineage: LineageOfRecords,
    lot: LotRecord,
    more: Pick<LotFigure, "variety" | "gramsOnHand" | "founders" | "tested">,
  ) {
    super(lineage.figures.get(lot.id) ?? nothingKnown);
    this.lot = lot.number;
    this.variety = more.variety;
    this.holder = lot.holder;
    this.gramsOnHand = more.gramsOnHand;
    this.founders = more.founders;
    this.lastTest = more.tested && testFigure(more.tested);
    this.#lineage = lineage;
    this.#lotId = lot.id;
    this.#tested = more.tested;
  }

  get tested(): TestRecord | null {
    return this.#tested;
  }

  get span(): SpanOfLot | null {
    return this.#lineage.spanOf(this.#lotId);
  }

  get assumed(): readonly string[] {
    return this.#lineage.assumedFor(this.#lotId).map(({ text }) => text);
  }

  /** As it is printed: with what was assumed, without the span. */
  toJSON() {
    const { lot, variety, holder, gramsOnHand, ...rest } = { ...this };
    return { lot, variety, holder, gramsOnHand, ...rest, assumed: this.assumed };
  }
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

/** The latest test by the first possible day of its date, of equals the one entered later. Null where nothing was tested. */
export function lastTestOf(tests: readonly TestRecord[]): TestRecord | null {
  let last: TestRecord | null = null;
  for (const test of tests) if (last === null || compareDays(test.first, last.first) >= 0) last = test;
  return last !== null && last.sown > 0 ? last : null;
}

/** A test of at least one seed, with the exact 95 % interval. */
function testFigure({ name, date, sown, normal }: TestRecord): TestFigure {
  const { low, high } = intervalOfCounts(normal, sown);
  return { test: name, date, germination: normal / sown, low, high };
}
