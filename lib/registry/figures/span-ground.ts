import type { Steps } from "@/lib/science/in-steps";
import { boundsOf } from "@/lib/science/lineage/drift-ends";
import { nothingBounds } from "@/lib/science/lineage/known-lot-faults";
import { lineageSpan } from "@/lib/science/lineage/lineage-span";
import type { Ends, FounderPair, GrowOutAsKnown, LineageSpanInput, LotAsKnown } from "@/lib/science/lineage/span-lots";
import type { MissingInRecord, NarrowingRecord } from "./span-of-lot";
import type { KnownNode } from "./spans-of-records";

/** So many incomplete records of a line are tried, the nearest first. */
const MOST_TRIED = 12;
/** So many are named in a sentence before the rest is only counted. */
const MOST_NAMED = 8;
/** So many plants that one more or less moves nothing. */
const WITHOUT_BOUND = 1_000_000_000;

/** A lineage as far as it is known, of which lines can be asked one by one. */
export class SpanGround {
  constructor(
    readonly known: ReadonlyMap<string, KnownNode>,
    private readonly pairs: readonly FounderPair[],
  ) {}

  input(): LineageSpanInput {
    return { lots: [...this.known.values()].map(({ lot }) => lot), founderPairs: this.pairs };
  }

  /** Every default that moves the span of a node, each once with the names of what it was taken for, the nearest first. */
  assumedFor(id: string): string[] {
    const takenFor = new Map<string, string[]>();
    const line = this.line(id);
    for (const { name, assumed } of line) {
      for (const { text } of assumed) takenFor.set(text, [...(takenFor.get(text) ?? []), name]);
    }
    const ofPairs = this.pairsIn(line).filter(({ coancestry }) => coancestry === "unknown");
    const kin = ofPairs.map(({ a, b }) => `${this.nameOf(a)} and ${this.nameOf(b)}`);
    const all = [...takenFor].map(([text, names]) => `${text}: ${named(names)}`);
    if (kin.length === 0) return all;
    return [...all, `founder lots were anything from unrelated to seed of one pool: ${named(kin)}`];
  }

  /** The one incomplete record that would narrow the diversity retained most, by trying both ends of each; laid down before each try. */
  *narrowsFor(id: string): Steps<NarrowingRecord | null> {
    const line = this.line(id);
    const lots = line.map(({ lot }) => lot);
    const pairs = this.pairsIn(line);
    const of = (input: LineageSpanInput): Ends | null => {
      const outcome = lineageSpan(input);
      return outcome.ok ? (outcome.value.lots.find((lot) => lot.id === id)?.diversityRetained ?? null) : null;
    };
    const now = of({ lots, founderPairs: pairs });
    if (now === null || now.high === now.low) return null;
    let best: { readonly left: number; readonly found: NarrowingRecord } | null = null;
    const tryEach = (
      missing: MissingInRecord,
      record: NarrowingRecord["record"],
      inputs: readonly LineageSpanInput[],
    ) => {
      const ends = inputs.flatMap((input) => of(input) ?? []);
      if (ends.length < inputs.length || ends.length === 0) return;
      const left = Math.max(...ends.map(({ low, high }) => high - low));
      if (left >= (best?.left ?? (now.high - now.low) * (1 - 1e-9))) return;
      const atWorst = ends.reduce((worst, each) => (each.low < worst.low ? each : worst));
      const atBest = ends.reduce((top, each) => (each.high > top.high ? each : top));
      best = { left, found: { missing, record, atWorst, atBest } };
    };
    for (const node of line.filter(({ lot, record }) => record && isIncomplete(lot)).slice(0, MOST_TRIED)) {
      const { kind = "lot", id: recordId = "" } = node.record ?? {};
      for (const [missing, variants] of variantsOf(node.lot)) {
        yield;
        const inputs = variants.map((lot) => ({
          lots: lots.map((each) => (each.id === lot.id ? lot : each)),
          founderPairs: pairs,
        }));
        tryEach(missing, { kind, id: recordId, name: node.name }, inputs);
      }
    }
    for (const pair of pairs.filter(({ coancestry }) => coancestry === "unknown").slice(0, MOST_TRIED)) {
      yield;
      const inputs = [0, this.nearest(pair)].map((coancestry) => ({
        lots,
        founderPairs: pairs.map((each) => (each === pair ? { ...pair, coancestry } : each)),
      }));
      const ids = [this.recordOf(pair.a), this.recordOf(pair.b)] as const;
      tryEach("kinship", { kind: "founders", ids, names: [this.nameOf(pair.a), this.nameOf(pair.b)] }, inputs);
    }
    return (best as { readonly found: NarrowingRecord } | null)?.found ?? null;
  }

  /** A node and all it descends from, the nearest first. What stands before a line that begins anew moves nothing. */
  private line(id: string): KnownNode[] {
    const reached = new Set([id]);
    for (const each of reached) {
      const lot = this.known.get(each)?.lot;
      if (lot && lot.kind !== "founder") for (const parent of lot.parents) reached.add(parent.id);
    }
    return [...reached].flatMap((each) => this.known.get(each) ?? []);
  }

  private pairsIn(line: readonly KnownNode[]): FounderPair[] {
    const inIt = new Set(line.map(({ lot }) => lot.id));
    return this.pairs.filter(({ a, b }) => inIt.has(a) && inIt.has(b));
  }

  private nearest({ a, b }: FounderPair): number {
    const within = (id: string) => {
      const lot = this.known.get(id)?.lot;
      return lot?.kind === "founder" ? (lot.coancestry ?? 0) : 0;
    };
    return Math.min(within(a), within(b));
  }

  private nameOf(id: string): string {
    return this.known.get(id)?.name ?? "";
  }

  private recordOf(id: string): string {
    return this.known.get(id)?.record?.id ?? "";
  }
}

function isIncomplete(lot: LotAsKnown): boolean {
  return variantsOf(lot).length > 0;
}

/** For each thing that is missing of a lot: what the record would be if it were known, at both ends. */
function variantsOf(lot: LotAsKnown): (readonly [MissingInRecord, readonly LotAsKnown[]])[] {
  if (lot.kind === "founder" || lot.kind === "split") return [];
  const found: (readonly [MissingInRecord, readonly LotAsKnown[]])[] = [];
  if (lot.parents.length > 1 && lot.parents.some(({ share }) => share === undefined)) {
    const rest = lot.parents.reduce((left, { share = 0 }) => left - share, 1);
    const unknown = lot.parents.filter(({ share }) => share === undefined);
    const allTo = (id: string) =>
      lot.parents.map((each) => ({ share: each.id === id ? Math.max(0, rest) : 0, ...each }));
    found.push(["parentShares", unknown.map(({ id }) => ({ ...lot, parents: allTo(id) }))]);
  }
  if (lot.kind !== "grow-out" || nothingBounds(lot)) return found;
  return [...found, ...countsOf(lot)];
}

function countsOf(lot: GrowOutAsKnown): (readonly [MissingInRecord, readonly LotAsKnown[]])[] {
  const apart = lot.sexes === "separate" || lot.seedParentsMayNotShed === true;
  const found: (readonly [MissingInRecord, readonly LotAsKnown[]])[] = [];
  for (const key of ["pollenParents", "seedParents"] as const) {
    const bounds = boundsOf(lot[key]);
    if (bounds.low === bounds.high) continue;
    const other = boundsOf(lot.pollenParents).high;
    const most =
      key === "seedParents" && !apart ? Math.min(bounds.high ?? WITHOUT_BOUND, other ?? WITHOUT_BOUND) : bounds.high;
    const least = key === "pollenParents" && !apart ? Math.max(bounds.low, boundsOf(lot.seedParents).low) : bounds.low;
    found.push([key, [least, most ?? WITHOUT_BOUND].map((count) => ({ ...lot, [key]: { low: count, high: count } }))]);
  }
  const { seedShares } = lot;
  if (seedShares === undefined || seedShares === "unknown")
    found.push([
      "seedShares",
      [
        { ...lot, seedShares: { largest: 1 } },
        { ...lot, seedShares: "equal" },
      ],
    ]);
  return found;
}

function named(names: readonly string[]): string {
  const each = [...new Set(names)];
  if (each.length <= MOST_NAMED) return each.join(", ");
  return `${each.slice(0, MOST_NAMED).join(", ")} and ${each.length - MOST_NAMED} before them`;
}
