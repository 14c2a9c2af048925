"use client";

import { Explained } from "@/components/numbers";
import { Button, NumberField } from "@/components/ui";
import type { Explanation } from "@/lib/display/explanation";
import { percent, plainNumber, wholeNumber } from "@/lib/display/numbers";
import { refusalSentence } from "@/lib/display/refusals";
import { defaultSelfingRate, equilibriumInbreeding, type Mating, separateSexes } from "@/lib/science/crops/mating";
import {
  type PopulationPlan,
  type PopulationPlanInput,
  populationPlan,
} from "@/lib/science/population/population-plan";
import { SideBySide } from "../../lots/_form/lot-form";
import { countTyped, shareTyped } from "./typed-parents";

/** What is asked for where nobody said otherwise: nine tenths of the diversity over thirty years, a grow-out every third. */
export const usualKeeping = { "keep.retain": "90", "keep.years": "30", "keep.between": "3" } as const;

/** How many plants keep so much of a variety for so long, and a way to take these numbers. */
export function KeepFields({
  live,
  mating,
  take,
}: {
  live: Readonly<Record<string, string>>;
  mating: Mating;
  take: (plan: PopulationPlan) => void;
}) {
  const retain = shareTyped(live["keep.retain"] ?? "");
  const years = countTyped(live["keep.years"]);
  const yearsBetweenGrowOuts = countTyped(live["keep.between"]);
  const separate = separateSexes(mating);
  const selfingRate = defaultSelfingRate(mating);
  const input: PopulationPlanInput | null =
    retain === null || years === null || yearsBetweenGrowOuts === null
      ? null
      : {
          ...{ retain, years, yearsBetweenGrowOuts },
          ...(separate ? { sexes: "separate" } : { selfingRate, inbreeding: equilibriumInbreeding(selfingRate) }),
        };
  const plan = input ? populationPlan(input) : null;
  return (
    <>
      <SideBySide>
        <NumberField name="keep.retain" label="Keep of its diversity" unit="%" value={live["keep.retain"]} required />
        <NumberField name="keep.years" label="for" unit="years" whole value={live["keep.years"]} required />
        <NumberField
          name="keep.between"
          label="with a grow-out every"
          unit="years"
          whole
          value={live["keep.between"]}
          required
        />
      </SideBySide>
      {plan?.ok && input ? (
        <>
          <Explained explanation={explanationOf(plan.value, input)}>
            <p>
              {wholeNumber(plan.value.floweringPlants)} plants in flower, seed kept from{" "}
              {wholeNumber(plan.value.seedParents)} in equal shares.
            </p>
          </Explained>
          <div>
            <Button onClick={() => take(plan.value)}>Take these numbers</Button>
          </div>
        </>
      ) : (
        <p className="quiet">
          {plan && !plan.ok
            ? plan.refusals.map(refusalSentence).join(" ")
            : "Write the three numbers, and it can be told."}
        </p>
      )}
    </>
  );
}

function explanationOf(plan: PopulationPlan, input: PopulationPlanInput): Explanation {
  return {
    title: "Plants that keep a variety",
    answer: `${wholeNumber(plan.floweringPlants)} plants`,
    formula: "t = ⌈years / years between grow-outs⌉; needed Ne = 1 / (2 (1 − retain^(1/t)))",
    inputs: [
      { name: "diversity to keep", value: percent(input.retain) },
      { name: "years", value: wholeNumber(input.years) },
      { name: "years between grow-outs", value: wholeNumber(input.yearsBetweenGrowOuts) },
      { name: "grow-outs, t", value: wholeNumber(plan.generations) },
      { name: "needed Ne of each", value: plainNumber(plan.effectiveSizeNeeded, 1) },
      ...(input.selfingRate ? [{ name: "selfing rate, the crop’s usual", value: percent(input.selfingRate) }] : []),
    ],
    assumed: [
      ...(input.sexes === "separate" ? ["Males and females half each."] : []),
      ...plan.assumed.map(({ text }) => `${text.charAt(0).toUpperCase()}${text.slice(1)}.`),
    ],
    unsure:
      "It knows no frost and no deer: plan for losses. Seed of very different amounts from each plant asks for more plants.",
    sources: ["Wright 1931, Genetics 16:97, turned round"],
    calc: `echo '${JSON.stringify(input)}' | npm run --silent calc -- population-plan`,
  };
}
