import { grouped } from "../change-set/grouped";
import { type CyclesOfTrait, cyclesOfTrait } from "./cycles-of-trait";
import type { TraitLine } from "./list-traits";
import {
  type PossibleCheck,
  type TraitRows,
  type TraitYearsRead,
  type TypeOfTrait,
  traitsScored,
  traitYearsOf,
} from "./read-trait-years";
import { type PointOfTrait, pointsOfTrait, type YearsCompared, yearsCompared } from "./trait-over-years";

/** What a trait did over the years, and what of it can be told from the weather. */
export interface HistoryOfTrait {
  readonly trait: TraitLine;
  readonly type: readonly TypeOfTrait[];
  /** by year, those of unknown year last */
  readonly points: readonly PointOfTrait[];
  /** varieties of which the same trait was scored in the same years */
  readonly checks: readonly PossibleCheck[];
  /** the one that is taken; null: none, then nothing is told from the weather */
  readonly check: PossibleCheck | null;
  readonly compared: YearsCompared | null;
  /** null without a check */
  readonly cycles: CyclesOfTrait | null;
}

/** A trait's history beside a check, by the id of its variety; null where none of its plants was scored. */
export function historyOfTrait(read: TraitYearsRead, checkId: string | null): HistoryOfTrait | null {
  const { trait, type, checks, growOuts, others, seed, mating } = read;
  if (trait === null) return null;
  const points = pointsOfTrait(growOuts);
  const check = checks.find(({ varietyId }) => varietyId === checkId) ?? null;
  const compared = yearsCompared(
    growOuts,
    check ? others.filter(({ varietyId }) => varietyId === check.varietyId) : [],
  );
  const newest = points.filter(({ id, version }) => version.id === trait.newest.id && compared?.beside.has(id));
  const cycles = check && compared?.outcome.ok ? cyclesOfTrait(newest, compared.outcome.value, seed, mating) : null;
  return { trait, type, points, checks, check, compared, cycles };
}

/** The histories of all traits by which a variety's plants were scored, in the order in which its traits stand. */
export function historiesOfTraits(rows: TraitRows, checkId: string | null): HistoryOfTrait[] {
  return traitsScored(rows).flatMap(({ id }) => historyOfTrait(traitYearsOf(rows, id), checkId) ?? []);
}

/** The checks of several traits together, each with all its years in common; those of most years first. */
export function checksOfTraits(histories: readonly HistoryOfTrait[]): PossibleCheck[] {
  const all = histories.flatMap(({ checks }) => checks);
  return [...grouped(all, ({ varietyId }) => varietyId).values()]
    .flatMap(([first, ...more]) => {
      if (!first) return [];
      const years = [...new Set([first, ...more].flatMap((each) => each.years))].sort((one, other) => one - other);
      return [{ ...first, years }];
    })
    .sort((one, other) => other.years.length - one.years.length);
}
