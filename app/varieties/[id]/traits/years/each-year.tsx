import Link from "next/link";
import { TraitOverYears } from "@/components/charts";
import { SimpleTable } from "@/components/tables";
import { counted } from "@/lib/display/plurals";
import { traitDifference } from "@/lib/display/trait-difference";
import type { TraitLine } from "@/lib/registry/traits/list-traits";
import type { TypeOfTrait } from "@/lib/registry/traits/read-trait-years";
import type { PointOfTrait } from "@/lib/registry/traits/trait-over-years";
import { differenceOf } from "@/lib/schemas/traits/difference-of";
import { drawnPoints, halfOf, keptOf, meanOf, plantsScored, rangeOfType } from "./said-of-point";

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
  const numbers = drawnPoints(trait, points);
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
          range={rangeOfType(type)}
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
            plants: plantsScored(point),
            mean: meanOf(point),
            half: halfOf(point),
            kept: keptOf(point),
            stood:
              point.differential === null
                ? "not compared"
                : traitDifference(point.differential, differenceOf(point.version)),
          },
        }))}
      />
    </div>
  );
}
