"use client";

import { Section } from "@/components/frame";
import { LongCalculation, useLongCalculation } from "@/components/long-calculation";
import { ExplainedHere, Measured } from "@/components/numbers";
import { Button, Notice } from "@/components/ui";
import type { Explanation } from "@/lib/display/explanation";
import { percent, percentSpan, wholeNumber } from "@/lib/display/numbers";
import { refusalSentence } from "@/lib/display/refusals";
import type { OutcomeSpread } from "@/lib/science/gene-drop/outcome-spread";
import { chanceOf } from "../_plan/chance-of-plan";
import { yearsAhead } from "../_plan/plan-of-address";
import type { PlanReckoned } from "../_plan/reckon-plan";
import { planInWords } from "../_words/plan-words";
import styles from "./grown-otherwise.module.css";

/** What chance makes of the plan: asked for, for it takes its time; told anew when the plan changes. */
export function Chance({ plan }: { plan: PlanReckoned }) {
  const words = planInWords(plan);
  return (
    <Section id="chance" title="What chance makes of it">
      <p>
        The figure above is what is to be expected on average over all genes. At a single place in the genome luck
        decides, and a rare form of a gene may be gone. Genes are dropped through every plant of the plan, at{" "}
        {wholeNumber(chanceOf(plan).replicates)} places, starting from the seed that is sown now.
      </p>
      <Asked key={words} plan={plan} />
    </Section>
  );
}

function Asked({ plan }: { plan: PlanReckoned }) {
  const { state, start, stop } = useLongCalculation();
  const input = chanceOf(plan);
  const ask = () => start("outcome-spread", input);
  if (state.state === "idle")
    return (
      <p className="not-on-paper">
        <Button onClick={ask}>Drop genes through this plan</Button>
      </p>
    );
  if (state.state !== "answered") return <LongCalculation of={state} unit="places" onStop={stop} />;
  const { answer } = state;
  if (!answer.ok)
    return (
      <Notice kind="waiting" title="It came to no answer" actions={<Button onClick={ask}>Try again</Button>}>
        {answer.refusals.map((each) => (
          <p key={each.code}>{refusalSentence(each)}</p>
        ))}
      </Notice>
    );
  return <Told spread={answer.value as OutcomeSpread} input={input} plan={plan} />;
}

function Told({
  spread: { retained, rareKept },
  input,
  plan,
}: {
  spread: OutcomeSpread;
  input: ReturnType<typeof chanceOf>;
  plan: PlanReckoned;
}) {
  const places = wholeNumber(input.replicates);
  const explanation = (title: string, answer: string, formula: string): Explanation => ({
    title,
    answer,
    formula,
    inputs: [
      { name: "plan", value: planInWords(plan) },
      { name: "places followed", value: places },
      { name: "chance fixed by", value: String(input.seed) },
    ],
    assumed: [
      "The seed that is sown now counts as the whole: nothing is lost before it. No selection, no foreign pollen.",
    ],
    unsure: `The average is known to ± ${percent(2 * retained.standardError)}; more places would narrow it.`,
    sources: ["MacCluer, VandeBerg, Read & Ryder 1986, Zoo Biol. 5:147"],
    calc: "npm run --silent calc -- outcome-spread",
  });
  const ends = percentSpan(retained.low, retained.high);
  const rare = percent(rareKept.probability, 0);
  return (
    <div className={styles.chance} aria-live="polite">
      <p>
        In {yearsAhead} years, of the diversity in today’s seed,{" "}
        <ExplainedHere
          explanation={explanation("diversity kept at one place", ends, "1 − Σ f² at each place; its 5 % and its 95 %")}
        >
          <Measured value={percent(retained.mean, 0)} span={ends} />
        </ExplainedHere>{" "}
        is kept at one place in the genome: in one place of twenty less, in one of twenty more.
      </p>
      <p>
        A form that 1 in 20 of today’s genes are is still there with a chance of{" "}
        <ExplainedHere explanation={explanation("a rare form is still there", rare, "mean of 1 − (1 − p)^k, p = 0.05")}>
          {rare}
        </ExplainedHere>
        .
      </p>
    </div>
  );
}
