"use client";

import { type FormEvent, useMemo, useRef, useState } from "react";
import { Figure } from "@/components/numbers";
import { SimpleTable } from "@/components/tables";
import { ButtonLink } from "@/components/ui";
import { refusalSentence } from "@/lib/display/refusals";
import type { GroundToGrowOn } from "@/lib/registry/varieties/read-grown-otherwise";
import { addressOfGrowOut, addressOfPlan, type PlanTyped, planOfAddress, yearsAhead } from "../_plan/plan-of-address";
import { type PlanReckoned, reckonPlan } from "../_plan/reckon-plan";
import { isSpan, leftExplanation, leftInWords, planInWords, shareOfWhat } from "../_words/plan-words";
import { Advice } from "./advice";
import { Chance } from "./chance";
import { Doubts } from "./doubts";
import styles from "./grown-otherwise.module.css";
import { PlanFields } from "./plan-fields";
import { type PlanLine, PlansOverYears } from "./plans-over-years";

/** A plan is typed, and what it would leave in thirty years stands beside today's. Works without script, too: the form is the address. */
export function GrownOtherwise({ ground, start }: { ground: GroundToGrowOn; start: PlanTyped }) {
  const [plan, setPlan] = useState(start);
  const form = useRef<HTMLFormElement>(null);
  const today = useMemo(() => reckonPlan(planOfAddress({}, ground), ground), [ground]);
  const reckoned = useMemo(() => reckonPlan(plan, ground), [plan, ground]);
  // Until somebody types how many give seed, they follow the plants as they stood to them.
  const seedTyped = useRef(false);
  const read = (event: FormEvent) => {
    if (!form.current) return;
    const typedIn = event.target instanceof HTMLInputElement ? event.target.name : "";
    if (typedIn === "seedParents") seedTyped.current = true;
    const seed = form.current.elements.namedItem("seedParents");
    if (typedIn === "plants" && !seedTyped.current && seed instanceof HTMLInputElement) {
      const [plants, part] = [Number(new FormData(form.current).get("plants")), partGivingSeed(start)];
      if (plants >= 1 && part !== null) seed.value = String(Math.max(1, Math.round(plants * part)));
    }
    const data = new FormData(form.current);
    const typed = Object.fromEntries([...new Set(data.keys())].map((name) => [name, data.getAll(name).map(String)]));
    const next = planOfAddress({ lots: [], ...typed }, ground);
    setPlan(next);
    window.history.replaceState(null, "", addressOfPlan(next));
  };
  return (
    <>
      <Head ground={ground} plan={reckoned} today={today} />
      <div className={styles.halves}>
        <form ref={form} onInput={read} className={`${styles.form} not-on-paper`}>
          <PlanFields ground={ground} plan={plan} start={start} refusals={reckoned.ok ? [] : reckoned.refusals} />
          <noscript>
            <button type="submit">Work it out</button>
          </noscript>
          <p className="row">
            <ButtonLink href={addressOfGrowOut(ground.variety.id, plan)} kind="chief">
              Plan this grow-out
            </ButtonLink>
            <a href="?">Back to today’s plan</a>
          </p>
        </form>
        <div className="stack">
          <PlansOverYears lines={linesOf(reckoned, today)} years={yearsAhead} />
          <YearTable plan={reckoned} today={today} />
        </div>
      </div>
      {reckoned.ok ? <Doubts ground={ground} plan={reckoned.value} /> : null}
      {reckoned.ok ? <Chance plan={reckoned.value} /> : null}
      <Advice ground={ground} plan={reckoned.ok ? reckoned.value : null} />
    </>
  );
}

/** Of the plants that flower those whose seed is kept, 0..1; null where it is not to be read. */
function partGivingSeed({ plants, seedParents }: PlanTyped): number | null {
  const part = Number(seedParents) / Number(plants);
  return part > 0 && part <= 1 ? part : null;
}

type Reckoned = ReturnType<typeof reckonPlan>;

function Head({ ground, plan, today }: { ground: GroundToGrowOn; plan: Reckoned; today: Reckoned }) {
  if (!plan.ok)
    return (
      <Figure value="Not yet" waiting>
        {plan.refusals.map(refusalSentence).join(" ")}
      </Figure>
    );
  const { left, fromNow } = plan.value;
  const same =
    today.ok &&
    leftInWords(today.value.left) === leftInWords(left) &&
    planInWords(plan.value) === planInWords(today.value);
  const comparable = today.ok && today.value.fromNow === fromNow && !same;
  return (
    <Figure value={leftInWords(left)} explanation={leftExplanation(plan.value, ground)}>
      {shareOfWhat(plan.value)} would be left in {yearsAhead} years, grown so
      {same ? ": this is today’s plan." : "."}
      {comparable && today.ok ? ` Today’s plan leaves ${leftInWords(today.value.left)}.` : ""}
      {isSpan(left) ? " What was not written down leaves it between these two: count on the lower." : ""}
    </Figure>
  );
}

function linesOf(plan: Reckoned, today: Reckoned): PlanLine[] {
  const line = (of: PlanReckoned, name: string, strong: boolean): PlanLine => ({
    name,
    strong,
    start: of.steps[0]?.left ?? null,
    steps: of.steps.flatMap(({ year, left }) => (year === null ? [] : [{ year, left }])),
  });
  const same = plan.ok && today.ok && planInWords(plan.value) === planInWords(today.value);
  const comparable = today.ok && (!plan.ok || today.value.fromNow === plan.value.fromNow);
  return [
    ...(comparable && today.ok && !same ? [line(today.value, "today’s plan", false)] : []),
    ...(plan.ok ? [line(plan.value, same ? "today’s plan" : "grown so", true)] : []),
  ];
}

function YearTable({ plan, today }: { plan: Reckoned; today: Reckoned }) {
  const lines = linesOf(plan, today);
  const years = [...new Set(lines.flatMap(({ steps }) => steps.map(({ year }) => year)))].sort((a, b) => a - b);
  if (lines.length === 0) return null;
  return (
    <details className="whole-on-paper">
      <summary>The same in figures</summary>
      <SimpleTable
        columns={[
          { key: "year", name: "After the grow-out" },
          ...lines.map(({ name }) => ({ key: name, name, kind: "count" as const })),
        ]}
        rows={years.map((year) => ({
          id: String(year),
          cells: {
            year: year === 0 ? "now" : `in ${year} ${year === 1 ? "year" : "years"}`,
            ...Object.fromEntries(
              lines.map(({ name, steps }) => {
                const step = steps.find((each) => each.year === year);
                return [name, step ? leftInWords(step.left, 1) : ""];
              }),
            ),
          },
        }))}
      />
    </details>
  );
}
