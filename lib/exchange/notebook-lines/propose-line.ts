import { Facts, type Told } from "./facts";
import { isTest, lineKind, SEED_KEPT } from "./line-kind";
import { LineSources } from "./line-sources";
import { plantsStanding } from "./plants-told";
import type { LineKind, LineProposal, ParentLot } from "./proposal";
import type { Amount, LineReading, Understood } from "./reading";
import { unknownFields } from "./unknown-fields";

/** Turns what was understood of a line into what it would become in the registry, leaning on the lines before it. */
export function proposeLine(understood: readonly Understood[], earlier: readonly LineReading[]): LineProposal {
  const facts = new Facts(understood);
  const told = facts.first("year");
  const year = told?.value.edtf ?? null;
  const sources = new LineSources(facts, earlier, year, told?.words ?? null);
  const kind = lineKind(facts);
  const growing = kind === "grow-out" || kind === "failed";
  const from = sources.sources(kind);
  makeLots(facts, sources, kind, year, from);
  const stock = (place: number, preferHarvest: boolean) => sources.stock(null, place, from, preferHarvest);
  const standing = growing ? plantsStanding(facts) : { count: null, assumed: [] };
  const shares = facts.all("shares").map((fact) => fact.value);
  const parents = facts.all("seed-parents").map((fact) => fact.value);
  const seedParents = parents.find((parent) => parent.counted === "plants") ?? parents[0] ?? null;
  if (facts.all("year").length > 1) {
    sources.assume("another-year", "The line names more than one year; the first is taken for all of it.");
  }
  if (growing && year !== null && isSeveralSeasons(year)) {
    sources.assume(
      "years-as-one",
      `${year.replace("/", " to ")} stands as one grow-out of several years; where it was sown anew each year, type a row for each.`,
    );
  }
  const inStock = facts.list.find((fact) => ["on-hand", "discarded", "seed-weight"].includes(fact.kind));
  const proposal: Omit<LineProposal, "unknown" | "assumed"> = {
    kind,
    year,
    yearWords: told?.words ?? null,
    yearCertainty: told?.certainty ?? null,
    sown: sownDay(facts, year),
    harvestYear: facts.first("harvest-year")?.value.edtf ?? null,
    lots: sources.lots,
    from,
    seedsSown: facts.first("seeds-sown")?.value.count ?? null,
    sownAmount: facts.first("sown-amount")?.value.amount ?? null,
    emerged: facts.first("emerged")?.value.count ?? null,
    plantsStanding: standing.count,
    flagged: facts.first("flagged")?.value.count ?? null,
    seedParents: seedParents?.count ?? null,
    seedParentsCounted: seedParents?.counted ?? null,
    allKept: seedParents?.all ?? false,
    rogues: facts.all("rogued").map((fact) => fact.value),
    seedShares: shares.find((share) => share.shares !== null)?.shares ?? null,
    bulked: shares.find((share) => share.bulked !== null)?.bulked ?? null,
    harvested: harvested(facts, sources, kind),
    onHand: facts.first("on-hand")?.value.amount ?? null,
    discarded: facts.all("discarded").map((fact) => fact.value.amount),
    seedWeight: facts.first("seed-weight")?.value ?? null,
    stockLot: inStock === undefined ? null : stock(inStock.from, false),
    given: facts.all("given").map((fact) => ({
      amount: fact.value.amount,
      to: fact.value.to,
      manner: fact.value.manner,
      lot: sources.stock(fact.value.lot, fact.from, from, true),
    })),
    received: received(facts, kind),
    germination: facts
      .all("germination")
      .filter(isNewTest)
      .map((fact) => {
        const { up, of, percent, how, days, where, lot } = fact.value;
        const tested = sources.stock(lot, where === "test" ? fact.from : -1, from, false);
        return { words: fact.words, up, of, percent, how, days, isTest: isTest(fact), lot: tested };
      }),
    failure: kind === "failed" ? (facts.first("failed")?.value.cause ?? "") : null,
    losses: facts.all("lost").map((fact) => fact.value),
    suspicions: facts.list
      .filter((fact) => ["suspected-cross", "off-types"].includes(fact.kind))
      .map((fact) => fact.words),
    neighbours: facts.all("neighbour").map((fact) => fact.value),
    isolation: facts.all("isolation").map((fact) => fact.value.method),
  };
  return { ...proposal, assumed: [...standing.assumed, ...sources.assumed], unknown: unknownFields(proposal) };
}

/** More years than one sowing takes: of a biennial it is two. */
function isSeveralSeasons(year: string): boolean {
  const span = /^(\d{4})\/(\d{4})$/.exec(year);
  return span !== null && Number(span[2]) - Number(span[1]) > 1;
}

/** "22/25 (88 %)" is one test told twice: the percentage behind a count that gives it is no other. */
function isNewTest(fact: Told<"germination">, index: number, all: readonly Told<"germination">[]): boolean {
  const [before, percent] = [all[index - 1]?.value, fact.value.percent?.value ?? null];
  const [up, of] = [before?.up?.value ?? null, before?.of?.value ?? null];
  return percent === null || up === null || of === null || Math.abs((up / of) * 100 - percent) > 0.5;
}

function makeLots(
  facts: Facts,
  sources: LineSources,
  kind: LineKind,
  year: string | null,
  from: readonly ParentLot[],
): void {
  sources.receiveIfNotSown();
  const keptSeed = facts.has(...SEED_KEPT);
  if (kind === "grow-out" && (keptSeed || !facts.has("purpose"))) {
    if (!keptSeed) sources.assume("seed-kept", "The line doesn't say that seed was kept; it is taken that it was.");
    const harvest = sources.harvest(facts.first("harvest-year")?.value.edtf ?? year);
    sources.blendAfterHarvest(harvest);
  }
  if (kind === "blend") sources.blendLot(from, facts.first("blend")?.words ?? "");
  const split = facts.first("split");
  if (split !== null) {
    const parent = kind === "split" && from[0] !== undefined ? from[0] : sources.stock(null, split.from, from, true);
    sources.splitLot(split.value.to, split.words, parent);
  }
}

/** Weights and counts of seed that were harvested; in a grow-out a bare "300 g" is taken for one. */
function harvested(facts: Facts, sources: LineSources, kind: LineKind): Amount[] {
  const told = facts.all("harvested").map((fact) => fact.value.amount);
  // a bare count of seeds can be what was sown as well
  const bare = facts
    .all("amount")
    .map((fact) => fact.value.amount)
    .filter((amount) => amount.unit !== "seeds");
  if (kind !== "grow-out" || told.length > 0 || bare.length === 0) return told;
  sources.assume(
    "amount-taken-as-harvest",
    `"${bare.map((amount) => amount.words).join(", ")}" is taken as what was harvested.`,
  );
  return bare;
}

/** What came in; "got back from Osk, a handful" says how much behind a comma. */
function received(facts: Facts, kind: LineKind): LineProposal["received"] {
  const told = facts.first("received")?.value ?? null;
  const bare = facts.first("amount")?.value.amount ?? null;
  return told !== null && told.amount === null && kind === "received" ? { ...told, amount: bare } : told;
}

function sownDay(facts: Facts, year: string | null): string | null {
  const on = facts.first("sown-on")?.value ?? null;
  if (on === null || year === null || !/^\d{4}$/.test(year)) return null;
  const month = `${year}-${String(on.month).padStart(2, "0")}`;
  return on.day === null ? month : `${month}-${String(on.day).padStart(2, "0")}`;
}
