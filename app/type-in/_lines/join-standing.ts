import type { LineProposal, ParentLot, ProposedLot } from "@/lib/exchange/notebook-lines/proposal";
import type { LineReading } from "@/lib/exchange/notebook-lines/reading";
import { standingLotRef } from "@/lib/schemas/notebook-typing/notebook-booking";
import { parseDate } from "@/lib/science/dates/parse-date";

/** A lot of the variety that stands in the registry already. */
export interface StandingLot {
  readonly id: string;
  readonly number: string;
  readonly years: { readonly first: number; readonly last: number } | null;
}

/**
 * Where a line leans on seed that no line tells of, and a lot stands already that it can be, that lot is proposed in place of a founder of
 * unknown seed: the one of the year that the line names, else the youngest harvested before the line's own year. It is marked as assumed.
 */
export function joinedToStanding(reading: LineReading, standing: readonly StandingLot[]): LineReading {
  if (standing.length === 0) return reading;
  let proposal = reading.proposal;
  for (const founder of reading.proposal.lots) {
    const lot = founder.kind === "founder" && founder.assumed ? standingFor(founder, proposal.year, standing) : null;
    if (lot) proposal = withLot(proposal, founder, lot);
  }
  return { ...reading, proposal };
}

function standingFor(founder: ProposedLot, year: string | null, standing: readonly StandingLot[]): StandingLot | null {
  const named = yearOf(founder.year);
  if (named !== null) return standing.find((lot) => lot.years?.first === named && lot.years.last === named) ?? null;
  // Words that name some seed ("Osk's") may mean any lot, and none of these.
  if (founder.words !== "") return null;
  const before = yearOf(year);
  const known = standing.filter((lot) => lot.years !== null && (before === null || lot.years.last <= before));
  return known.toSorted((a, b) => (b.years?.last ?? 0) - (a.years?.last ?? 0))[0] ?? null;
}

function yearOf(edtf: string | null): number | null {
  const date = edtf === null ? null : parseDate(edtf);
  return date?.ok ? Number(date.value.last.slice(0, 4)) : null;
}

function withLot(proposal: LineProposal, founder: ProposedLot, lot: StandingLot): LineProposal {
  const parent = (each: ParentLot): ParentLot =>
    each.lot === founder.name ? { ...each, lot: standingLotRef(lot.id), assumed: true } : each;
  const maybe = (each: ParentLot | null) => each && parent(each);
  const text = `Lot ${lot.number} stands here already and is taken for the seed that the line does not name.`;
  return {
    ...proposal,
    lots: proposal.lots
      .filter((each) => each.name !== founder.name)
      .map((each) => ({ ...each, parents: each.parents.map(parent) })),
    from: proposal.from.map(parent),
    given: proposal.given.map((gift) => ({ ...gift, lot: maybe(gift.lot) })),
    germination: proposal.germination.map((test) => ({ ...test, lot: maybe(test.lot) })),
    stockLot: maybe(proposal.stockLot),
    assumed: [...proposal.assumed.filter((each) => each.code !== "unwritten-seed"), { code: "standing-lot", text }],
  };
}
