import { defaultSelfingRate, type Mating } from "@/lib/science/crops/mating";
import { twoSidedStudent } from "@/lib/science/distributions/student";
import {
  type RealisedHeritability,
  realisedHeritability,
  type SelectionCycle,
} from "@/lib/science/selection/realised-heritability";
import type { TraitYears } from "@/lib/science/trait-years/trait-years";
import type { PointOfTrait } from "./trait-over-years";

/** Which grow-outs a grow-out's seed came from. */
export interface SeedFrom {
  /** the grow-out that was sown */
  readonly growOutId: string;
  readonly lotId: string;
}

/** A lot with the grow-out that it was harvested from, or the lot that it is a part of. */
export interface LotOfCycles {
  readonly id: string;
  readonly growOutId: string | null;
  readonly parentLotId: string | null;
}

/** Grow-outs that follow one another, each sown from seed of the one before, with what was chosen in each and where its plants stood against the check. */
export interface CyclesOfTrait {
  readonly growOuts: readonly { readonly name: string; readonly year: number | null }[];
  readonly cycles: readonly SelectionCycle[];
  /** share of the genes that seed parents give, (1 + s)/2: differentials are times it */
  readonly control: number;
  /** null where there are fewer than three cycles, or nothing was chosen */
  readonly found: RealisedHeritability | null;
  /** 95 %, by Student's t of its degrees of freedom; null without a figure */
  readonly span: { readonly low: number; readonly high: number } | null;
}

/**
 * The longest run of grow-outs of which each was sown from the one before, whose plants stood beside the check and of which (but for the last) it is known how far the kept
 * stood above their neighbours. Means are differences to the check, so that the weather is out of them.
 */
export function cyclesOfTrait(
  points: readonly PointOfTrait[],
  compared: TraitYears,
  seed: { readonly from: readonly SeedFrom[]; readonly lots: readonly LotOfCycles[] },
  mating: Mating,
): CyclesOfTrait {
  const difference = new Map(compared.years.map(({ year, toCheck }) => [year, toCheck?.difference ?? null]));
  const byId = new Map(points.map((point) => [point.id, point]));
  const before = sownFrom(seed);
  const standsAt = ({ year }: PointOfTrait) => (year === null ? null : (difference.get(year) ?? null));
  const run = (point: PointOfTrait, seen: ReadonlySet<string>): PointOfTrait[] => {
    if (standsAt(point) === null || seen.has(point.id)) return [];
    const runs = (before.get(point.id) ?? []).flatMap((id) => {
      const parent = byId.get(id);
      return parent && parent.differential !== null ? [run(parent, new Set([...seen, point.id]))] : [];
    });
    const longest = runs.reduce<PointOfTrait[]>((best, each) => (each.length > best.length ? each : best), []);
    return [...longest, point];
  };
  const chosen = points
    .map((point) => run(point, new Set()))
    .reduce<PointOfTrait[]>((best, each) => (each.length > best.length ? each : best), []);
  const control = (1 + defaultSelfingRate(mating)) / 2;
  const cycles = chosen.map((point, at): SelectionCycle => {
    const mean = standsAt(point) ?? 0;
    return at === chosen.length - 1 ? { mean } : { mean, differential: control * (point.differential ?? 0) };
  });
  const outcome = realisedHeritability({ cycles });
  const found = outcome.ok ? outcome.value : null;
  const half = found ? twoSidedStudent(0.05, found.cumulative.length - 1) * found.standardError : 0;
  return {
    growOuts: chosen.map(({ name, year }) => ({ name, year })),
    cycles,
    control,
    found,
    span: found ? { low: found.heritability - half, high: found.heritability + half } : null,
  };
}

/** From which grow-outs the seed of each came, through parts that were given away. */
function sownFrom({ from, lots }: { readonly from: readonly SeedFrom[]; readonly lots: readonly LotOfCycles[] }) {
  const byId = new Map<string, LotOfCycles[]>();
  for (const lot of lots) byId.set(lot.id, [...(byId.get(lot.id) ?? []), lot]);
  const grownIn = (lotId: string, depth: number): string[] =>
    (byId.get(lotId) ?? []).flatMap(({ growOutId, parentLotId }) => {
      if (growOutId !== null) return [growOutId];
      return parentLotId === null || depth === 0 ? [] : grownIn(parentLotId, depth - 1);
    });
  const found = new Map<string, string[]>();
  for (const { growOutId, lotId } of from)
    found.set(growOutId, [...(found.get(growOutId) ?? []), ...grownIn(lotId, 8)]);
  return found;
}
