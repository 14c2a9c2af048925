import { NOTHING_SAID } from "./line";
import type { LineageEntry, LineageGrowOut, LineageLot, LineageRemark, LineageTest, ProposedLineage } from "./lineage";
import { freeName } from "./lot-names";
import type { LineProposal, ParentLot, ProposedLot } from "./proposal";
import type { Amount, Count, LineReading } from "./reading";

/**
 * Turns the readings of a notebook's lines, in the order typed, into one proposed chain: lots, grow-outs, ledger entries,
 * germination tests and years without sowing, as plain objects that name each other. What is assumed and what is unknown
 * stays marked; nothing is filled in.
 */
export function linesToLineage(readings: readonly LineReading[]): ProposedLineage {
  const names = new Set<string>();
  const lots: LineageLot[] = [];
  const growOuts: LineageGrowOut[] = [];
  for (const [line, { proposal }] of readings.entries()) {
    const growOut = growOutOf(proposal, line, names);
    if (growOut !== null) growOuts.push(growOut);
    for (const lot of proposal.lots) lots.push(lineageLot(lot, line, growOut?.name ?? null));
  }
  return {
    lots,
    growOuts,
    ledger: readings.flatMap(({ proposal }, line) => entriesOf(proposal, line)),
    tests: readings.flatMap(({ proposal }, line) => testsOf(proposal, line)),
    gaps: readings.flatMap(({ words, proposal }, line) =>
      proposal.kind === "gap" ? [{ line, year: proposal.year, words }] : [],
    ),
    remarks: readings.flatMap(remarksOf),
  };
}

function lineageLot(lot: ProposedLot, line: number, growOut: string | null): LineageLot {
  const unknown: LineageLot["unknown"][number][] = [];
  if (lot.year === null) unknown.push("year");
  if (lot.kind === "founder") unknown.push("parents");
  if (lot.parents.length > 1 && lot.parents.some((parent) => parent.share === null)) unknown.push("shares");
  return { ...lot, line, growOut: lot.kind === "harvest" ? growOut : null, unknown };
}

function growOutOf(proposal: LineProposal, line: number, names: Set<string>): LineageGrowOut | null {
  if (proposal.kind !== "grow-out" && proposal.kind !== "failed") return null;
  const lot = proposal.lots.find((made) => made.kind === "harvest") ?? null;
  const name = freeName(`grow-out ${lot?.name ?? proposal.year ?? line + 1}`, names);
  names.add(name);
  const { year, sown, seedsSown, emerged, plantsStanding, seedShares, bulked, suspicions, unknown } = proposal;
  const kept = seedParentsOf(proposal);
  return {
    name,
    line,
    year,
    sown,
    parents: proposal.from,
    seedsSown,
    emerged,
    plantsStanding,
    roguedBeforePollen: rogued(proposal, "before"),
    roguedAfterPollen: rogued(proposal, "after"),
    roguedUntimed: rogued(proposal, null),
    seedParents: kept.count,
    seedParentsCounted: proposal.seedParentsCounted,
    seedShares,
    bulked,
    foreignPollen: null,
    outcome: proposal.failure,
    lot: lot?.name ?? null,
    suspicions,
    assumed: [...proposal.assumed, ...kept.assumed],
    unknown,
  };
}

/** "Kept all" is every plant that stood, less those pulled, where both are exact numbers. */
function seedParentsOf(proposal: LineProposal): Pick<LineageGrowOut, "assumed"> & { readonly count: Count | null } {
  if (!proposal.allKept || proposal.seedParents !== null) return { count: proposal.seedParents, assumed: [] };
  const standing = proposal.plantsStanding;
  const gone = [...proposal.rogues, ...proposal.losses].map((one) => one.count);
  const fewer = sumOf(gone);
  if (standing?.value == null || (gone.length > 0 && fewer?.value == null)) return { count: null, assumed: [] };
  const value = standing.value - (fewer?.value ?? 0);
  if (value < 1) return { count: null, assumed: [] };
  const count = { words: "all", value, low: value, high: value, approximate: standing.approximate };
  return {
    count,
    assumed: [
      { code: "all-plants-kept", text: `"All" is ${value}: the plants that stood, less those pulled or lost.` },
    ],
  };
}

function rogued(proposal: LineProposal, timing: "before" | "after" | null): Count | null {
  return sumOf(proposal.rogues.filter((pass) => pass.timing === timing).map((pass) => pass.count));
}

/** The sum of counts; words alone where one of them has no number, null where there is none at all. */
function sumOf(counts: readonly (Count | null)[]): Count | null {
  if (counts.length === 0) return null;
  if (counts.length === 1) return counts[0] ?? null;
  const known = counts.filter((count): count is Count => count !== null);
  const words = known.map((count) => count.words).join(" and ");
  if (known.length < counts.length) return { ...NOTHING_SAID, words };
  const add = (part: "value" | "low" | "high") =>
    known.reduce<number | null>(
      (sum, count) => (sum === null || count[part] === null ? null : sum + (count[part] ?? 0)),
      0,
    );
  return {
    words,
    value: add("value"),
    low: add("low"),
    high: add("high"),
    approximate: known.some((count) => count.approximate),
  };
}

function entriesOf(proposal: LineProposal, line: number): LineageEntry[] {
  const entries: LineageEntry[] = [];
  const add = (kind: LineageEntry["kind"], lot: ParentLot | null, amount: Amount | null, other: string | null) => {
    if (lot !== null)
      entries.push({ line, lot: lot.lot, lotAssumed: lot.assumed, on: proposal.year, kind, amount, other });
  };
  const made = (kind: ProposedLot["kind"]): ParentLot | null => {
    const lot = proposal.lots.find((one) => one.kind === kind && !one.assumed);
    return lot === undefined ? null : { lot: lot.name, share: null, assumed: false, words: null };
  };
  if (proposal.received !== null) add("received", made("founder"), proposal.received.amount, proposal.received.from);
  // with several lots sown nobody says how much of each
  const [sown, another] = proposal.from;
  const seeds = proposal.sownAmount ?? seedsAsAmount(proposal.seedsSown);
  if (seeds !== null && sown !== undefined && another === undefined) add("sown", sown, seeds, null);
  for (const amount of proposal.harvested) add("harvested", made("harvest"), amount, null);
  for (const gift of proposal.given) add("given", gift.lot, gift.amount, gift.to);
  for (const amount of proposal.discarded) add("discarded", proposal.stockLot, amount, null);
  if (proposal.onHand !== null) add("weighed", proposal.stockLot, proposal.onHand, null);
  return entries;
}

function seedsAsAmount(count: Count | null): Amount | null {
  return count === null ? null : { ...count, unit: "seeds", givenUnit: null, grams: null };
}

function testsOf(proposal: LineProposal, line: number): LineageTest[] {
  return proposal.germination.flatMap(({ lot, isTest, ...test }) => {
    if (!isTest || lot === null) return [];
    const bookable = test.up?.value != null && test.of?.value != null && !test.up.approximate && !test.of.approximate;
    return [{ ...test, line, lot: lot.lot, lotAssumed: lot.assumed, on: proposal.year, bookable }];
  });
}

function remarksOf({ proposal, notUnderstood, understood }: LineReading, line: number): LineageRemark[] {
  const seen = proposal.germination.filter((one) => !one.isTest).map((one) => one.words);
  const losses = understood
    .filter((fact) => ["lost", "neighbour", "isolation"].includes(fact.kind))
    .map((fact) => fact.words);
  const suspicions = proposal.kind === "grow-out" || proposal.kind === "failed" ? [] : proposal.suspicions;
  return [...seen, ...losses, ...suspicions, ...notUnderstood.map((span) => span.words)].map((words) => ({
    line,
    words,
  }));
}
