import { Explained } from "@/components/numbers";
import type { Explanation } from "@/lib/display/explanation";
import { plainNumber } from "@/lib/display/numbers";
import { counted, listed } from "@/lib/display/plurals";
import type { CyclesOfTrait } from "@/lib/registry/traits/cycles-of-trait";
import type { TraitLine } from "@/lib/registry/traits/list-traits";

/** What share of what was chosen for stayed, over three cycles or more beside a check; else what is missing for it. */
export function WhatStayed({ trait, cycles }: { trait: TraitLine; cycles: CyclesOfTrait | null }) {
  if (cycles === null)
    return (
      <p className="measure">
        What of a choice is inherited shows only against a check that stood beside it: without one the weather between
        two years is larger than what was gained.
      </p>
    );
  if (cycles.found === null || cycles.span === null) {
    const run = cycles.growOuts.map(({ name }) => name);
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
  return (
    <Explained explanation={explanationOf(trait, cycles, cycles.found.heritability, cycles.span)}>
      <span>
        Of what was chosen for over {counted(cycles.cycles.length - 1, "cycle")}, a share of{" "}
        <b>{plainNumber(cycles.found.heritability, 2)}</b> stayed ({plainNumber(cycles.span.low, 2)} to{" "}
        {plainNumber(cycles.span.high, 2)}).
      </span>
    </Explained>
  );
}

function explanationOf(
  trait: TraitLine,
  { cycles, growOuts, control }: CyclesOfTrait,
  heritability: number,
  span: { low: number; high: number },
): Explanation {
  return {
    title: `the realised heritability of ${trait.newest.name}`,
    answer: `${plainNumber(heritability, 2)} (${plainNumber(span.low, 2)} to ${plainNumber(span.high, 2)})`,
    formula: "S_t = Σ c·differentials before t;  R_t = D_t − D_0;  h² = Σ S R/Σ S²;  ± t·standard error",
    inputs: [
      { name: "share of the genes that seed parents give, c", value: plainNumber(control, 2) },
      ...growOuts.map(({ name, year }, at) => ({
        name: `${name}${year === null ? "" : `, ${year}`}`,
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
