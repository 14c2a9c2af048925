import { Measured } from "@/components/numbers";
import { percent, percentSpan, plainNumber, wholeNumber } from "@/lib/display/numbers";
import { listed } from "@/lib/display/plurals";
import { scoreInWords } from "@/lib/display/scores";
import type { TraitLine } from "@/lib/registry/traits/list-traits";
import type { TypeOfTrait } from "@/lib/registry/traits/read-trait-years";
import type { PointOfTrait } from "@/lib/registry/traits/trait-over-years";
import { rangeTold } from "@/lib/schemas/traits/range-told";
import { exactInterval } from "@/lib/science/binomial/exact-interval";
import { dayFromNumber } from "@/lib/science/dates/civil-day";

/** The grow-outs of a trait that can be drawn on one scale: of numbers, of a known year, by the newest version. */
export function drawnPoints(trait: TraitLine, points: readonly PointOfTrait[]) {
  const { kind } = trait.newest;
  if (kind !== "count" && kind !== "measure" && kind !== "scale") return [];
  return points.flatMap(({ id, year, mean, kept, version }) =>
    year === null || mean === null || version.id !== trait.newest.id
      ? []
      : [{ id, year, mean: mean.mean, interval: mean.interval, quarters: mean.quarters, kept: kept?.mean ?? null }],
  );
}

/** The range that the type description allows; null where it says none in numbers. */
export function rangeOfType(type: readonly TypeOfTrait[]): readonly [number, number] | null {
  return type.map(({ allowed }) => rangeTold(allowed)).find((each) => each !== null) ?? null;
}

export function plantsScored({ plants, answers }: PointOfTrait): string {
  return wholeNumber(plants.length || [...answers.values()].reduce((sum, each) => sum + each, 0));
}

export function isShare({ version }: PointOfTrait): boolean {
  return version.kind === "yes-no" || version.kind === "category";
}

/** The mean of the plants of which seed was kept, with their number; of scores that are words how often each was given. */
export function keptOf(point: PointOfTrait): string {
  if (point.kept !== null) return `${said(point, point.kept.mean)} (${point.kept.plants})`;
  return point.keptAnswers.size > 0 ? answersInWords(point.version, point.keptAnswers) : "not known";
}

/** The most frequent answers: "white in 12 and cream in 3". */
function answersInWords(version: PointOfTrait["version"], answers: ReadonlyMap<string, number>): string {
  const told = [...answers].sort(([, one], [, other]) => other - one).slice(0, 4);
  return listed(told.map(([text, count]) => `${scoreInWords(version, { value: null, text })} in ${count}`));
}

/** The mean of a grow-out with its span, the share of those that say yes, or how often each answer was given. */
export function meanOf(point: PointOfTrait) {
  const { mean, answers, version } = point;
  if (mean === null) return answersInWords(version, answers);
  if (isShare(point)) {
    const yes = point.plants.filter(({ value }) => value >= 0.5).length;
    const { low, high } = exactInterval(yes, point.plants.length, 0.95);
    return <Measured value={percent(mean.mean)} span={percentSpan(low, high)} />;
  }
  const span =
    mean.interval === null ? null : `${said(point, mean.interval.low)} to ${said(point, mean.interval.high)}`;
  return <Measured value={said(point, mean.mean)} span={span} />;
}

export function halfOf(point: PointOfTrait): string {
  if (point.mean === null || isShare(point) || point.mean.plants < 4) return "–";
  const [, low, , high] = point.mean.quarters;
  return `${said(point, low)} to ${said(point, high)}`;
}

/** A value of the trait as it is read; of dates the day of the year they fall on. */
export function said(point: PointOfTrait, value: number): string {
  if (isShare(point)) return percent(value);
  if (point.version.kind === "date") return dayFromNumber(Math.round(value)).slice(5);
  return plainNumber(value, Math.abs(value) >= 100 ? 0 : 1);
}
