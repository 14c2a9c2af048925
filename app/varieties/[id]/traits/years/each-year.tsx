import Link from "next/link";
import { TraitOverYears } from "@/components/charts";
import { Measured } from "@/components/numbers";
import { SimpleTable } from "@/components/tables";
import { percent, percentSpan, plainNumber, wholeNumber } from "@/lib/display/numbers";
import { counted, listed } from "@/lib/display/plurals";
import { scoreInWords } from "@/lib/display/scores";
import { traitDifference } from "@/lib/display/trait-difference";
import type { TraitLine } from "@/lib/registry/traits/list-traits";
import type { TypeOfTrait } from "@/lib/registry/traits/read-trait-years";
import type { PointOfTrait } from "@/lib/registry/traits/trait-over-years";
import { rangeTold } from "@/lib/schemas/traits/range-told";
import { exactInterval } from "@/lib/science/binomial/exact-interval";
import { dayFromNumber } from "@/lib/science/dates/civil-day";

/** How the scored plants of each grow-out were spread, with those of which seed was kept, and what the type says. */
export function EachYear({
  trait,
  points,
  type,
}: {
  trait: TraitLine;
  points: readonly PointOfTrait[];
  type: readonly TypeOfTrait[];
}) {
  const { kind, unit, name } = trait.newest;
  const drawn = kind === "count" || kind === "measure" || kind === "scale" ? points : [];
  const numbers = drawn.flatMap(({ id, year, mean, kept, version }) =>
    year === null || mean === null || version.id !== trait.newest.id
      ? []
      : [{ id, year, mean: mean.mean, interval: mean.interval, quarters: mean.quarters, kept: kept?.mean ?? null }],
  );
  const range = type.map(({ allowed }) => rangeTold(allowed)).find((each) => each !== null) ?? null;
  const older = points.filter(({ version }) => version.id !== trait.newest.id);
  return (
    <div className="stack-near">
      {type.map(({ trait: line, allowed, offType }) => (
        <p key={`${line} ${allowed}`}>
          The type says of {line}: {allowed}.{offType ? ` Off-type: ${offType}.` : ""}
        </p>
      ))}
      {numbers.length > 0 ? (
        <TraitOverYears
          points={numbers}
          range={range}
          unit={unit}
          label={`${name} of ${counted(numbers.length, "grow-out")}, from ${numbers[0]?.year} to ${numbers.at(-1)?.year}; the table below tells the same`}
        />
      ) : null}
      {older.length > 0 ? (
        <p className="quiet">
          {counted(older.length, "grow-out")} {older.length === 1 ? "was" : "were"} scored by an older version of the
          trait: {older.length === 1 ? "it stands" : "they stand"} in the table, and not in the picture.
        </p>
      ) : null}
      <SimpleTable
        entries
        columns={[
          { key: "year", name: "Year" },
          { key: "growOut", name: "Grow-out" },
          { key: "plants", name: "Scored", kind: "count" },
          { key: "mean", name: kind === "yes-no" || kind === "category" ? "Share" : "Mean", kind: "count" },
          { key: "half", name: "Middle half", kind: "count" },
          { key: "kept", name: "Kept plants", kind: "count" },
          { key: "stood", name: "They stood at", kind: "count" },
        ]}
        rows={points.map((point) => ({
          id: `${point.id} ${point.version.id}`,
          cells: {
            year: point.year === null ? "not known" : String(point.year),
            growOut: (
              <>
                <Link href={`/grow-outs/${point.id}`}>{point.name}</Link>
                {point.version.id === trait.newest.id ? "" : `, version ${point.version.version}`}
                {point.scorers > 1 ? `, ${point.scorers} scorers` : ""}
              </>
            ),
            plants: wholeNumber(
              point.plants.length || [...point.answers.values()].reduce((sum, each) => sum + each, 0),
            ),
            mean: meanOf(point),
            half: halfOf(point),
            kept: point.kept === null ? "not known" : `${said(point, point.kept.mean)} (${point.kept.plants})`,
            stood:
              point.differential === null
                ? "not compared"
                : traitDifference(point.differential, {
                    unit: kind === "date" ? "days" : unit,
                    share: isShare(point),
                    scale: kind === "scale" ? [1, 9] : null,
                  }),
          },
        }))}
      />
    </div>
  );
}

function isShare({ version }: PointOfTrait): boolean {
  return version.kind === "yes-no" || version.kind === "category";
}

function meanOf(point: PointOfTrait) {
  const { mean, answers, version } = point;
  if (mean === null) {
    const told = [...answers].sort(([, one], [, other]) => other - one).slice(0, 4);
    return listed(told.map(([text, count]) => `${scoreInWords(version, { value: null, text })} in ${count}`));
  }
  if (isShare(point)) {
    const yes = point.plants.filter(({ value }) => value >= 0.5).length;
    const { low, high } = exactInterval(yes, point.plants.length, 0.95);
    return <Measured value={percent(mean.mean)} span={percentSpan(low, high)} />;
  }
  const span =
    mean.interval === null ? null : `${said(point, mean.interval.low)} to ${said(point, mean.interval.high)}`;
  return <Measured value={said(point, mean.mean)} span={span} />;
}

function halfOf(point: PointOfTrait): string {
  if (point.mean === null || isShare(point) || point.mean.plants < 4) return "–";
  const [, low, , high] = point.mean.quarters;
  return `${said(point, low)} to ${said(point, high)}`;
}

/** A value of the trait as it is read; of dates the day of the year they fall on. */
function said(point: PointOfTrait, value: number): string {
  if (isShare(point)) return percent(value);
  if (point.version.kind === "date") return dayFromNumber(Math.round(value)).slice(5);
  return plainNumber(value, Math.abs(value) >= 100 ? 0 : 1);
}
