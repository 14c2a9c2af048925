import { compareCodePoints } from "@/lib/science/code-point-order";
import { equilibriumInbreeding } from "@/lib/science/crops/mating";
import { CoancestryEnds, type Part } from "@/lib/science/lineage/coancestry-ends";
import { crossEnds, isCrossAsKnown, partsOfCross } from "@/lib/science/lineage/cross-ends";
import { type DriftEnds, driftEnds, rateEnds } from "@/lib/science/lineage/drift-ends";
import { founderEquivalents } from "@/lib/science/lineage/founder-equivalents";
import { founderPairFaults, pairEnds } from "@/lib/science/lineage/founder-pairs";
import { type GroupOfLots, groupsOfLots } from "@/lib/science/lineage/groups-of-lots";
import { forOrder, knownLotFaults, nothingBounds } from "@/lib/science/lineage/known-lot-faults";
import { meanEnds, mixtureEnds } from "@/lib/science/lineage/mixture-ends";
import { type Pedigree, pedigree } from "@/lib/science/lineage/pedigree";
import { plantsFaults } from "@/lib/science/lineage/plants-faults";
import { sistersOf } from "@/lib/science/lineage/sister-ends";
import { lineageSpanAssumed } from "@/lib/science/lineage/span-assumed";
import type {
  Ends,
  GrowOutAsKnown,
  LineageSpan,
  LineageSpanInput,
  LotAsKnown,
  LotSpan,
  ParentShareKnown,
  SizeEnds,
} from "@/lib/science/lineage/span-lots";
import { united } from "@/lib/science/lineage/united";
import { accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";

/** The two squares of one group of kin lots may take this many numbers: 160 MB. */
const MOST_IN_SQUARES = 20_000_000;

/**
 * The lineage of lots of which not all was written down: each figure at the worst and at the best that the records allow.
 *
 *     θ_new = a² θ̄ + κ_m (S − θ̄) = (a² − κ_m) θ̄ + κ_m S          a, κ_m, α at their ends: driftEnds; θ̄ at its ends: mixtureEnds
 *     F_new = α S + (2a − 1 − α) θ̄                                S = ½(1 + F̄)
 *     Θ(new, X) = a Σ w Θ(A, X)                                    CoancestryEnds
 *     a cross, and two harvests of the same plants: crossEnds, sisterEnds
 *
 * Why the ends are ends: 0 ≤ κ_m ≤ a² and 0 ≤ α ≤ 2a − 1, so θ_new, F_new and every Θ rise with θ̄, F̄ and Θ of the parents; S ≥ θ̄, so
 * they rise with κ_m and α, and with a. From the founders down, what is worst for the parents is worst for the lot. S ≥ θ̄ holds at both
 * ends, too: θ̄ ≤ Σ w θ (mixtureEnds), and θ ≤ ½(1 + F) of each lot because κ_m ≤ ½(1 + α) (c ≤ ½ of a plant that cannot self).
 *
 * Counts between bounds, seed shares not written, a selfing rate between two, parents' shares not written (from none of it to all that
 * is left), founders who may be kin: all are taken at the end that is worst or best. Where a figure takes two of them at ends that
 * exclude each other, or a mixture of unknown shares meets another of its kin, the span is a little too wide, never too narrow. Both ends equal lineage where all is known.
 * A grow-out of which nothing bounds the plants begins the measure anew, as a founder inbred as its selfing rate would leave it: `since`.
 * Foreign pollen left out counts as 0 and is named; pollen shares of uncounted plants are alike, and unequal ones only lower both ends.
 *
 * Takes lots in any order, gives spans in input order: probabilities 0 to 1, plants. Refused: what lineage refuses; bounds that cross;
 * known shares of sum above 1; pollen shares of uncounted plants; pairs of lots that are no founders, repeated, nearer than either is to itself; more than 3,162 lots of one group that all still have offspring to come.
 * Example: 10 seed parents alike of 10 to 60 plants: θ from 0.01875 to 0.05, diversity kept 95 % to 98 %.
 * Source: derived from the recursion of lineage, by running it at both ends; no worked example in print was found.
 */
export function lineageSpan(input: LineageSpanInput): Outcome<LineageSpan> {
  const faults = input.lots.flatMap((lot, place) => knownLotFaults(lot, ["lots", place]));
  const ordered = pedigree(input.lots.map(forOrder));
  if (!ordered.ok) return refused(...faults, ...ordered.refusals);
  const pairs = input.founderPairs ?? [];
  const lots = new Map(input.lots.map((lot) => [lot.id, lot]));
  faults.push(...founderPairFaults(pairs, lots), ...plantsFaults(input.lots));
  if (faults.length > 0) return refused(...faults);
  return spansOf(input, ordered.value, lots);
}

function spansOf(
  input: LineageSpanInput,
  ordered: Pedigree,
  lots: ReadonlyMap<string, LotAsKnown>,
): Outcome<LineageSpan> {
  const order = byMixturesBehind(ordered.lots.map(({ id }) => asMeasured(lots.get(id) as LotAsKnown)));
  const rankOf = new Map(order.map(({ id }, rank) => [id, rank]));
  const rankIn = (id: string) => rankOf.get(id) as number;
  const parts = order.map((lot) => partsOf(lot, rankIn));
  const pairs = (input.founderPairs ?? []).map((pair) => ({
    ranks: [rankIn(pair.a), rankIn(pair.b)] as const,
    ends: pairEnds(pair, lots),
  }));
  const groups = groupsOfLots(
    parts,
    pairs.map(({ ranks }) => ranks),
  );
  const most = Math.max(0, ...groups.map(({ places }) => places));
  if (2 * most ** 2 > MOST_IN_SQUARES) return refused(tooManyInUse(most));
  const spans = new Array<LotSpan>(order.length);
  for (const group of groups) followGroup(group, { order, parts, pairs, spans });
  return accepted({
    lots: input.lots.map(({ id }) => spans[rankIn(id)] as LotSpan),
    assumed: lineageSpanAssumed(input.lots),
  });
}

/**
 * The lots in an order that the order of entry does not move: by how many mixtures of unknown shares lie behind them, parents first. A
 * mixture's nearness to another lot is told the closer, the more is known of the other by then: of mixtures with as many behind them
 * those come first of which some share is known, and their ids decide between equals.
 */
function byMixturesBehind(parentsFirst: readonly LotMeasured[]): LotMeasured[] {
  const placed = new Map<string, { readonly behind: number; readonly within: number }>();
  for (const lot of parentsFirst) {
    const made = madeOf(lot);
    const most = made.reduce((max, { id }) => Math.max(max, placed.get(id)?.behind ?? 0), 0);
    const within = made.every(({ share }) => share === undefined) ? 1 : 0;
    placed.set(lot.id, isMixture(made) ? { behind: most + 1, within } : { behind: most, within: 2 });
  }
  const place = ({ id }: LotMeasured) => placed.get(id) ?? { behind: 0, within: 2 };
  return parentsFirst.toSorted((one, other) => {
    const [a, b] = [place(one), place(other)];
    // What is no open mixture stays behind its parents.
    return a.behind - b.behind || a.within - b.within || (a.within === 2 ? 0 : compareCodePoints(one.id, other.id));
  });
}

/** Whether the shares are open: one left out alone is what the others leave. */
function isMixture(made: readonly ParentShareKnown[]): boolean {
  return made.filter(({ share }) => share === undefined).length > 1;
}

interface Following {
  readonly order: readonly LotMeasured[];
  readonly parts: readonly (readonly Part[])[];
  readonly pairs: readonly { readonly ranks: readonly [number, number]; readonly ends: Ends }[];
  readonly spans: LotSpan[];
}

/** A lot as it is followed: one of which nothing bounds the plants stands as a founder. */
type LotMeasured = LotAsKnown & { readonly begun?: true };

function asMeasured(lot: LotAsKnown): LotMeasured {
  return nothingBounds(lot) ? { ...lot, begun: true } : lot;
}

function madeOf(lot: LotMeasured): readonly ParentShareKnown[] {
  return lot.kind === "founder" || lot.begun ? [] : lot.parents;
}

function partsOf(lot: LotMeasured, rankIn: (id: string) => number): Part[] {
  const made = madeOf(lot);
  if (made.length === 1) return made.map(({ id }) => ({ rank: rankIn(id), share: 1 }));
  if (lot.kind === "grow-out" && !lot.begun && isCrossAsKnown(lot)) return partsOfCross(lot, rankIn);
  const left = made.some(({ share }) => share === undefined);
  const sum = left ? 1 : made.reduce((total, { share = 0 }) => total + share, 0);
  return made.map(({ id, share }) => ({ rank: rankIn(id), share: share === undefined ? null : share / sum }));
}

/** Works through one group of kin lots, parents first. */
function followGroup(group: GroupOfLots, { order, parts, pairs, spans }: Following): void {
  const between = new CoancestryEnds(group.places);
  const pairsOf = pairs.filter(({ ranks: [a] }) => group.has(a));
  const sisters = sistersOf(group.ranks.map((rank) => ({ rank, lot: order[rank] as LotMeasured })));
  for (const rank of group.ranks) {
    const lot = order[rank] as LotMeasured;
    const made = parts[rank] as readonly Part[];
    const { span, passing, withSister } = spanOf(lot, made, spans, between);
    spans[rank] = span;
    if (group.hasOffspring(rank)) {
      between.take(rank, made, span.coancestry, passing);
      for (const {
        ranks: [a, b],
        ends,
      } of pairsOf)
        if (Math.max(a, b) === rank) between.tell(a, b, ends);
      for (const { rank: other, common } of sisters(rank))
        if (withSister) between.tell(rank, other, withSister(common));
    }
    for (const done of group.doneAfter(rank)) between.giveBack(done);
  }
}

const allOfIt: Ends = { low: 1, high: 1 };

function spanOf(lot: LotMeasured, parts: readonly Part[], spans: readonly LotSpan[], between: CoancestryEnds) {
  const at = (rank: number) => spans[rank] as LotSpan;
  if (lot.kind === "founder") {
    const { inbreeding = 0, coancestry = 0 } = lot;
    const found = { inbreeding: same(inbreeding), coancestry: same(coancestry), generations: same(0) };
    return { span: lotSpan(lot.id, found, null, []), passing: allOfIt };
  }
  if (lot.begun && lot.kind === "grow-out") {
    const { low, high } = rateEnds(lot.selfingRate);
    const inbreeding = { low: equilibriumInbreeding(low), high: equilibriumInbreeding(high) };
    const begins = { inbreeding, coancestry: same(0), generations: same(0) };
    return { span: lotSpan(lot.id, begins, null, [lot.id]), passing: allOfIt };
  }
  const theta = mixtureEnds(
    parts,
    (rank) => at(rank).coancestry,
    (a, b) => between.between(a, b),
  );
  const inbreeding = meanEnds(parts, (rank) => at(rank).inbreeding);
  const generations = meanEnds(parts, (rank) => at(rank).generations);
  const since = parts.reduce<readonly string[]>((all, { rank }) => united(all, at(rank).since), []);
  if (lot.kind !== "grow-out") {
    return { span: lotSpan(lot.id, { inbreeding, coancestry: theta, generations }, null, since), passing: allOfIt };
  }
  if (isCrossAsKnown(lot)) return spanOfCross(lot, parts, { at, between, inbreeding, generations, since });
  const drift = driftEnds(lot);
  const ends = { low: grown("low", drift, inbreeding, theta), high: grown("high", drift, inbreeding, theta) };
  const made = {
    inbreeding: { low: ends.low.inbreeding, high: ends.high.inbreeding },
    coancestry: { low: ends.low.coancestry, high: ends.high.coancestry },
    generations: { low: 1 + generations.low, high: 1 + generations.high },
  };
  const withSister = (common: Ends): Ends => ({
    low: grown("low", { ...drift, fromOnePlant: common }, inbreeding, theta).coancestry,
    high: grown("high", { ...drift, fromOnePlant: common }, inbreeding, theta).coancestry,
  });
  const span = lotSpan(lot.id, made, sizeEnds(lot, drift, inbreeding), since);
  return { span, passing: drift.passing, withSister };
}

function spanOfCross(
  lot: GrowOutAsKnown,
  parts: readonly Part[],
  of: Pick<LotSpan, "inbreeding" | "generations" | "since"> & {
    readonly at: (rank: number) => LotSpan;
    readonly between: CoancestryEnds;
  },
) {
  const [seed, pollen] = parts.map(({ rank }) => rank) as [number, number];
  const ends = crossEnds(lot, of.at(seed), of.at(pollen), of.between.between(seed, pollen));
  const generations = { low: 1 + of.generations.low, high: 1 + of.generations.high };
  const span = lotSpan(lot.id, { ...ends, generations }, sizeEnds(lot, driftEnds(lot), of.inbreeding), of.since);
  return { span, passing: ends.passing };
}

function grown(end: "low" | "high", drift: DriftEnds, inbreeding: Ends, theta: Ends) {
  const [a, kappa, alpha] = [drift.passing[end], drift.fromOnePlant[end], drift.insideOnePlant[end]];
  const self = (1 + inbreeding[end]) / 2;
  return {
    coancestry: a * a * theta[end] + kappa * (self - theta[end]),
    inbreeding: (2 * a - 1) * theta[end] + alpha * (self - theta[end]),
  };
}

/** Ne = 1/(κ(1 + F̄)), κ of the plants alone, whatever pollen came from outside. */
function sizeEnds(lot: GrowOutAsKnown, drift: DriftEnds, inbreeding: Ends): SizeEnds {
  const own = (lot.foreignPollen ?? 0) > 0 ? driftEnds({ ...lot, foreignPollen: 0 }) : drift;
  const { low, high } = own.fromOnePlant;
  return { low: 1 / (high * (1 + inbreeding.high)), high: low === 0 ? null : 1 / (low * (1 + inbreeding.low)) };
}

function lotSpan(
  id: string,
  { inbreeding, coancestry, generations }: Pick<LotSpan, "inbreeding" | "coancestry" | "generations">,
  effectiveSize: SizeEnds | null,
  since: readonly string[],
): LotSpan {
  return {
    id,
    inbreeding,
    coancestry,
    diversityRetained: { low: 1 - coancestry.high, high: 1 - coancestry.low },
    founderEquivalents: { low: founderEquivalents(coancestry.high), high: founderEquivalents(coancestry.low) },
    effectiveSize,
    generations,
    since,
  };
}

function same(value: number): Ends {
  return { low: value, high: value };
}

function tooManyInUse(lots: number): Refusal {
  const needed = "give a part of the tree: the lots that are asked for and their ancestors";
  return refusal("too-many-in-use", ["lots"], lots, "lots of one group all have offspring to come", needed);
}
