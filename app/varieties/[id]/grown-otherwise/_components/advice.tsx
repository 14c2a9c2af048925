import Link from "next/link";
import { Section } from "@/components/frame";
import { ExplainedHere } from "@/components/numbers";
import { SimpleTable } from "@/components/tables";
import type { Explanation } from "@/lib/display/explanation";
import { effectiveSize, percent, wholeNumber } from "@/lib/display/numbers";
import { counted } from "@/lib/display/plurals";
import type { GroundToGrowOn } from "@/lib/registry/varieties/read-grown-otherwise";
import { alleleCapture } from "@/lib/science/population/allele-capture";
import { type PopulationPlanInput, populationPlan } from "@/lib/science/population/population-plan";
import { publishedAdvice } from "@/lib/science/population/published-advice";
import { usualYearsBetween, yearsAhead } from "../_plan/plan-of-address";
import type { PlanReckoned } from "../_plan/reckon-plan";

const keeps = [0.95, 0.9, 0.8, 0.7] as const;
const rare = [
  { frequency: 0.1, words: "1 in 10" },
  { frequency: 0.05, words: "1 in 20" },
  { frequency: 0.01, words: "1 in 100" },
] as const;

/** How many plants it takes, beside what has been published about it. */
export function Advice({ ground, plan }: { ground: GroundToGrowOn; plan: PlanReckoned | null }) {
  const every = plan?.every ?? usualYearsBetween;
  const { mating, usualInbreeding: inbreeding } = ground;
  return (
    <Section id="advice" title="How many plants it takes">
      <div className="stack">
        <p>
          To keep so much of what is in the seed now for {yearsAhead} years, with a grow-out every{" "}
          {every === 1 ? "year" : counted(every, "year")}, seed from all plants in equal shares. Fewer grow-outs help as
          much as more plants.
        </p>
        <SimpleTable
          columns={[
            { key: "keep", name: "Keep" },
            { key: "size", name: "Effective size", kind: "count" },
            { key: "plants", name: "Plants in flower", kind: "count" },
          ]}
          rows={keeps.map((retain) => {
            const input: PopulationPlanInput = {
              ...{ retain, years: yearsAhead, yearsBetweenGrowOuts: every },
              ...(mating.sexes === "separate"
                ? { sexes: "separate" }
                : { selfingRate: mating.selfingRate, inbreeding }),
            };
            const found = populationPlan(input);
            const plants = found.ok ? wholeNumber(found.value.floweringPlants) : "too many";
            return {
              id: String(retain),
              cells: {
                keep: percent(retain, 0),
                size: found.ok ? effectiveSize(found.value.effectiveSizeNeeded) : "",
                plants: (
                  <ExplainedHere explanation={planExplanation(retain, every, plants, ground)}>{plants}</ExplainedHere>
                ),
              },
            };
          })}
        />
        <h3>To have a rare form of a gene among them</h3>
        <p>With 95 % certainty, for one gene: a form that so many of the genes in the seed are.</p>
        <SimpleTable
          columns={[
            { key: "form", name: "Genes of that form" },
            { key: "plants", name: "Plants", kind: "count" },
          ]}
          rows={rare.map(({ frequency, words }) => {
            const found = alleleCapture({ frequency, probability: 0.95, loci: 1, inbreeding });
            const plants = found.ok ? wholeNumber(found.value.plants) : "unknown";
            return {
              id: words,
              cells: {
                form: words,
                plants: (
                  <ExplainedHere explanation={captureExplanation(words, plants, inbreeding)}>{plants}</ExplainedHere>
                ),
              },
            };
          })}
        />
        <details className="whole-on-paper">
          <summary>What has been published about it</summary>
          <p>They answer different questions, and so they differ. None knows your variety.</p>
          <SimpleTable
            entries
            columns={[
              { key: "what", name: "For" },
              { key: "advice", name: "Plants" },
              { key: "source", name: "Source" },
              { key: "read", name: "How far it was read" },
            ]}
            rows={publishedAdvice.map((row) => ({ id: row.what, cells: { ...row } }))}
          />
        </details>
        <p className="not-on-paper">
          <Link href="/methods/population-plan">How numbers of plants are worked out</Link>
        </p>
      </div>
    </Section>
  );
}

function planExplanation(retain: number, every: number, plants: string, ground: GroundToGrowOn): Explanation {
  const { sexes, selfingRate = 0 } = ground.mating;
  return {
    title: `Plants that keep ${percent(retain, 0)} for ${yearsAhead} years`,
    answer: plants,
    formula: "the fewest plants whose effective size reaches 1/(2(1 − keep^(1/t))), t = ⌈years / years between⌉",
    inputs: [
      { name: "keep", value: percent(retain, 0) },
      { name: "a grow-out every", value: counted(every, "year") },
      { name: "selfing rate", value: String(selfingRate) },
      { name: "sexes", value: sexes === "separate" ? "on plants of their own" : "on one plant" },
      { name: "inbreeding", value: ground.usualInbreeding.toFixed(2) },
    ],
    assumed: ["Seed is kept from every plant, the same amount from each; every plant sheds the same amount of pollen."],
    sources: ["Wright 1931, Genetics 16:97"],
    calc: "npm run --silent calc -- population-plan",
  };
}

function captureExplanation(words: string, plants: string, inbreeding: number): Explanation {
  return {
    title: `Plants that catch a form of ${words}`,
    answer: plants,
    formula: "the smallest n with 1 − (1 − p)^(2n/(1 + F)) ≥ 0.95",
    inputs: [
      { name: "p", value: words },
      { name: "inbreeding F", value: inbreeding.toFixed(2) },
    ],
    assumed: ["One gene is looked at; the plants are unrelated, picked at random, and give both seed and pollen."],
    sources: ["Marshall & Brown 1975", "Brown & Marshall 1995, as quoted in collecting protocols"],
    calc: "npm run --silent calc -- allele-capture",
  };
}
