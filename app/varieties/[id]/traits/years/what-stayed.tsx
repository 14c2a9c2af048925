import { Explained } from "@/components/numbers";
import { SimpleTable } from "@/components/tables";
import type { Explanation } from "@/lib/display/explanation";
import { plainNumber } from "@/lib/display/numbers";
import { counted, listed } from "@/lib/display/plurals";
import { traitDifference } from "@/lib/display/trait-difference";
import type { CyclesOfTrait } from "@/lib/registry/traits/cycles-of-trait";
import type { TraitLine } from "@/lib/registry/traits/list-traits";
import { differenceOf } from "@/lib/schemas/traits/difference-of";

/** How a grow-out of the run is named: where its name may not be told, its year stands. */
type Naming = "name" | "year";

/** What came of choosing over three cycles or more beside a check, and what share of what was chosen for stayed; else what is missing for it. */
export function WhatStayed({
  trait,
  cycles,
  naming = "name",
}: {
  trait: TraitLine;
  cycles: CyclesOfTrait | null;
  naming?: Naming;
}) {
  if (cycles === null)
    return (
      <p className="measure">
        What of a choice is inherited shows only against a check that stood beside it: without one the weather between
        two years is larger than what was gained.
      </p>
    );
  if (cycles.found === null || cycles.span === null) {
    const run = cycles.growOuts.map((each) => named(each, naming));
    return (
      <p className="measure">
        {run.length < 3
          ? `It takes three grow-outs that follow one another, each sown from the one before, scored beside the check, with the kept plants known and compared with their neighbours. ${
              run.length === 0 ? "None is on record so." : `On record so: ${listed(run)}.`
            }`
          : `In ${listed(run)} the kept stood no higher than their neighbours: nothing was chosen, so nothing can have stayed.`}
      </p>
    );
  }
  const { heritability } = cycles.found;
  const last = cycles.found.cumulative.at(-1);
  const of = differenceOf(trait.newest);
  return (
    <div className="stack-near">
      <p className="measure">
        Over {counted(cycles.cycles.length - 1, "cycle")} the seed parents were chosen by{" "}
        {traitDifference(last?.differential ?? 0, of)} in all
        {cycles.control < 1
          ? ` (of their distance from their neighbours ${plainNumber(cycles.control, 2)} counts, their part of the genes)`
          : ""}
        ; against the check the plants have moved by {traitDifference(last?.response ?? 0, of)}.
      </p>
      <CycleTable cycles={cycles} naming={naming} of={of} />
      <Explained explanation={explanationOf(trait, cycles, heritability, cycles.span, naming)} brief>
        <span>
          Of what was chosen for a share of <b>{plainNumber(heritability, 2)}</b> stayed (
          {plainNumber(cycles.span.low, 2)} to {plainNumber(cycles.span.high, 2)}).
          {verdict(heritability, cycles.span)}
        </span>
      </Explained>
    </div>
  );
}

/** What to make of a share that cannot be read as it stands. */
function verdict(heritability: number, { low, high }: { readonly low: number; readonly high: number }): string {
  if (low <= 0 && high >= 1) return " So wide a span tells nothing yet: it takes more cycles.";
  if (heritability > 1) return " More moved than was chosen: chance in few parents, or something else, moved it, too.";
  if (heritability < 0) return " It moved against the choice: chance in few parents, or something else, moved it.";
  return "";
}

/** Each grow-out of the run: what was chosen in it, and where its plants stood; both added up. */
function CycleTable({
  cycles: { growOuts, cycles, found },
  naming,
  of,
}: {
  cycles: CyclesOfTrait;
  naming: Naming;
  of: Parameters<typeof traitDifference>[1];
}) {
  return (
    <SimpleTable
      entries
      columns={[
        { key: "growOut", name: naming === "year" ? "Year" : "Grow-out" },
        { key: "stood", name: "Stood to the check at", kind: "count" },
        { key: "moved", name: "Moved since the first", kind: "count" },
        { key: "chosen", name: "Then chosen", kind: "count" },
        { key: "all", name: "Chosen in all", kind: "count" },
      ]}
      rows={cycles.map(({ mean, differential }, at) => {
        const growOut = growOuts[at] ?? { name: "", year: null };
        const after = found?.cumulative[at];
        const response = at === 0 ? 0 : (found?.cumulative[at - 1]?.response ?? 0);
        return {
          id: `${at} ${growOut.name}`,
          cells: {
            growOut: named(growOut, naming),
            stood: traitDifference(mean, of),
            moved: at === 0 ? "–" : traitDifference(response, of),
            chosen: differential === undefined ? "–" : traitDifference(differential, of),
            all: differential === undefined || !after ? "–" : traitDifference(after.differential, of),
          },
        };
      })}
    />
  );
}

function named({ name, year }: CyclesOfTrait["growOuts"][number], naming: Naming): string {
  return naming === "name" || year === null ? name : String(year);
}

function explanationOf(
  trait: TraitLine,
  { cycles, growOuts, control }: CyclesOfTrait,
  heritability: number,
  span: { low: number; high: number },
  naming: Naming,
): Explanation {
  return {
    title: `the realised heritability of ${trait.newest.name}`,
    answer: `${plainNumber(heritability, 2)} (${plainNumber(span.low, 2)} to ${plainNumber(span.high, 2)})`,
    formula: "S_t = Σ c·differentials before t;  R_t = D_t − D_0;  h² = Σ S R/Σ S²;  ± t·standard error",
    inputs: [
      { name: "share of the genes that seed parents give, c", value: plainNumber(control, 2) },
      ...growOuts.map((growOut, at) => ({
        name: naming === "name" && growOut.year !== null ? `${growOut.name}, ${growOut.year}` : named(growOut, naming),
        value: `${plainNumber(cycles[at]?.mean ?? 0, 2)} to the check${
          cycles[at]?.differential === undefined ? "" : `, chosen ${plainNumber(cycles[at]?.differential ?? 0, 2)}`
        }`,
      })),
    ],
    assumed: [
      "Seed parents alone were chosen; pollen was of all.",
      "The check did not change, and stood in the same place.",
    ],
    unsure:
      "The span is too narrow: chance in few parents and the doubt of the first mean are in every point, and are not counted here. It may leave 0 to 1; then the figure tells nothing.",
    sources: ["Hill 1972, Biometrics 28:747", "Falconer & Mackay 1996, ch. 11"],
    calc: `echo '${JSON.stringify({ cycles })}' | npm run --silent calc -- realised-heritability`,
  };
}
