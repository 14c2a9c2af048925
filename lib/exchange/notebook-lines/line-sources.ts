import { parseDate } from "@/lib/science/dates/parse-date";
import type { Assumption } from "@/lib/science/outcome";
import type { Facts, Told } from "./facts";
import { SEED_KEPT } from "./line-kind";
import { freeName } from "./lot-names";
import type { LineKind, ParentLot, ProposedLot } from "./proposal";
import type { LineReading, LotReference } from "./reading";
import { defaultLot, type LotsBefore, lotOfPerson, resolveLot } from "./resolve-lot";

/**
 * Finds the lots that a line leans on and makes those that it brings. What no line has made (the first seed of all, "the
 * 1988 seed" that was never written in) becomes a founder lot marked as assumed: a known gap, drawn, never left out.
 */
export class LineSources {
  readonly assumed: Assumption[] = [];
  private readonly made: ProposedLot[] = [];
  private readonly before: LotsBefore;
  private readonly taken: Set<string>;
  private readonly firstKept: number;

  constructor(
    private readonly facts: Facts,
    earlier: readonly LineReading[],
    private readonly year: string | null,
    private readonly yearWords: string | null,
  ) {
    const lots = earlier.flatMap((line) => line.proposal.lots);
    const sownLast = earlier.findLast((line) => line.proposal.kind === "grow-out" || line.proposal.kind === "failed");
    this.before = { lots, year, sownLast: sownLast?.proposal.from ?? [] };
    this.taken = new Set(lots.map((lot) => lot.name));
    this.firstKept = facts.list.find((fact) => SEED_KEPT.includes(fact.kind))?.from ?? Number.POSITIVE_INFINITY;
  }

  get lots(): readonly ProposedLot[] {
    return this.made;
  }

  /** What was sown, blended or split. */
  sources(kind: LineKind): ParentLot[] {
    const blend = this.facts.first("blend");
    if (kind === "blend" && blend !== null) return this.blended(blend, () => this.usual(false));
    if (kind === "split") return [this.named() ?? this.usual(false)];
    if (kind !== "grow-out" && kind !== "failed") return [];
    const sown = this.facts.all("sown-from").flatMap((fact) => fact.value.lots);
    if (sown.length > 0) return sown.map((reference) => this.refer(reference, true));
    const received = this.facts.first("received");
    if (received !== null && received.from < this.firstKept) return [this.receive(received)];
    if (blend !== null && blend.from < this.firstKept) return this.blended(blend, () => this.usual(true));
    return [this.usual(true)];
  }

  /** The received lot, unless it was sown and is made already. */
  receiveIfNotSown(): ProposedLot | null {
    const received = this.facts.first("received");
    if (received === null) return null;
    const name = this.receive(received).lot;
    return this.made.find((lot) => lot.name === name) ?? null;
  }

  harvest(year: string | null): ProposedLot {
    const isExact = year !== null && /^\d{4}(?:-\d{2})?(?:-\d{2})?$/.test(year);
    const base = isExact ? (year ?? "").slice(0, 4) : (this.yearWords?.replace(/\?$/, "") ?? "seed");
    const words = this.facts.list.filter((fact) => SEED_KEPT.includes(fact.kind)).map((fact) => fact.words);
    return this.make({
      base,
      kind: "harvest",
      year,
      words: words.join(", "),
      person: null,
      parents: [],
      assumed: false,
    });
  }

  /** A blend made after the harvest of the same line, or by a line of its own. */
  blendLot(parents: readonly ParentLot[], words: string): ProposedLot {
    const base = this.year === null ? "blend" : `${firstYear(this.year)} blend`;
    return this.make({ base, kind: "blend", year: this.year, words, person: null, parents, assumed: false });
  }

  /** The lot that the harvest of this line was mixed into, where the line says so after the harvest. */
  blendAfterHarvest(harvest: ProposedLot): ProposedLot | null {
    const blend = this.facts.first("blend");
    if (blend === null || blend.from < this.firstKept) return null;
    const own = { lot: harvest.name, share: null, assumed: false, words: null };
    return this.blendLot(
      this.blended(blend, () => own),
      blend.words,
    );
  }

  splitLot(to: string, words: string, parent: ParentLot): ProposedLot {
    const origin = this.before.lots.find((lot) => lot.name === parent.lot);
    const base = `${parent.lot} with ${to}`;
    return this.make({
      base,
      kind: "split",
      year: origin?.year ?? null,
      words,
      person: to,
      parents: [parent],
      assumed: false,
    });
  }

  /** The lot that was given from, weighed or thrown away: this line's own after its harvest, else what was sown, else the usual one. */
  stock(reference: LotReference | null, place: number, from: readonly ParentLot[], preferHarvest: boolean): ParentLot {
    if (reference !== null) return this.refer(reference, false);
    const harvest = this.made.find((lot) => lot.kind === "harvest");
    if (harvest !== undefined && (preferHarvest || place > this.firstKept)) return own(harvest);
    const received = this.made.find((lot) => lot.kind === "founder" && !lot.assumed);
    if (from.length === 0 && received !== undefined) return own(received);
    const [only, another] = from;
    if (only !== undefined && another === undefined) return { ...only, share: null };
    return this.named() ?? this.usual(false);
  }

  private named(): ParentLot | null {
    const reference = this.facts.first("sown-from")?.value.lots[0];
    return reference === undefined ? null : this.refer(reference, false);
  }

  private blended(blend: Told<"blend">, ownSeed: () => ParentLot): ParentLot[] {
    const { parts, withOwn } = blend.value;
    const named = parts.map((part) => ({ ...this.refer(part.lot, false), share: part.share }));
    return withOwn ? [ownSeed(), ...named] : named;
  }

  /** The usual seed: the youngest earlier lot; where there is none, a founder that stands for it. */
  private usual(toSow: boolean): ParentLot {
    const lot = defaultLot(this.before, toSow);
    if (lot !== null) {
      this.assume("usual-seed", `Which seed it was is not said; "${lot.name}" is taken, the youngest written before.`);
      return { lot: lot.name, share: null, assumed: true, words: null };
    }
    const base = this.year === null ? "seed before" : `before ${firstYear(this.year)}`;
    const founder = this.founder(base, null, "", null, true);
    this.assume("unwritten-seed", "No line tells where the seed came from; a founder lot stands for it.");
    return { lot: founder.name, share: null, assumed: true, words: null };
  }

  private refer(reference: LotReference, toSow: boolean): ParentLot {
    const lot = resolveLot(reference, this.before, toSow);
    const { words } = reference;
    if (lot !== null) {
      const isLastYears = reference.kind === "last-year" && lot.year?.slice(0, 4) === this.yearBefore(reference);
      const isExact = reference.kind === "year" || reference.kind === "whose" || isLastYears;
      if (!isExact) this.assume("which-seed", `"${words}" is taken to be "${lot.name}".`);
      return { lot: lot.name, share: null, assumed: !isExact, words };
    }
    const year = reference.kind === "year" ? reference.year : this.yearBefore(reference);
    const person = reference.kind === "whose" ? reference.whose : null;
    const again = this.made.find((made) => made.assumed && made.words === words);
    const founder = again ?? this.founder(year ?? person ?? words, year, words, person, true);
    this.assume("unwritten-seed", `No line tells of "${words}"; a founder lot stands for it.`);
    return { lot: founder.name, share: null, assumed: true, words };
  }

  private yearBefore(reference: LotReference): string | null {
    const isKnown =
      reference.kind === "last-year" && this.year !== null && /^\d{4}/.test(this.year) && !this.year.includes("/");
    return isKnown ? String(Number((this.year ?? "").slice(0, 4)) - 1) : null;
  }

  private receive(received: Told<"received">): ParentLot {
    const { from, how } = received.value;
    const known = lotOfPerson(from, this.before.lots);
    if (known !== null && how === "not-said") {
      this.assume("same-giver", `"${from}" is taken to be "${known.name}" of an earlier line.`);
      return { lot: known.name, share: null, assumed: true, words: received.words };
    }
    if (how === "returned") {
      this.assume("returned-seed", `Whether it is the seed that went to ${from} or was grown from it is not said.`);
    }
    const made = this.made.find((lot) => lot.words === received.words && !lot.assumed);
    const founder = made ?? this.founder(from, null, received.words, from, false);
    return { lot: founder.name, share: null, assumed: false, words: received.words };
  }

  private founder(
    base: string,
    year: string | null,
    words: string,
    person: string | null,
    assumed: boolean,
  ): ProposedLot {
    return this.make({ base, kind: "founder", year, words, person, parents: [], assumed });
  }

  private make(lot: Omit<ProposedLot, "name" | "firstSeen"> & { readonly base: string }): ProposedLot {
    const { base, ...rest } = lot;
    const name = freeName(base.length > 40 ? base.slice(0, 40).trimEnd() : base, this.taken);
    this.taken.add(name);
    const made = { name, firstSeen: this.year, ...rest };
    this.made.push(made);
    return made;
  }

  assume(code: string, text: string): void {
    if (!this.assumed.some((known) => known.text === text)) this.assumed.push({ code, text });
  }
}

/** The first year that an EDTF text can mean. */
function firstYear(edtf: string): string {
  const parsed = parseDate(edtf);
  return parsed.ok ? parsed.value.first.slice(0, 4) : edtf;
}

function own(lot: ProposedLot): ParentLot {
  return { lot: lot.name, share: null, assumed: false, words: null };
}
