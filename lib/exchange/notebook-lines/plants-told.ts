import type { Assumption } from "@/lib/science/outcome";
import type { Facts } from "./facts";
import type { Count } from "./reading";

/**
 * Plants alive just before the first roguing, as far as the line tells. A later count of the same stand (thinned,
 * survived) goes before the planted one; what was left after roguing is added to what was pulled, and said so.
 */
export function plantsStanding(facts: Facts): {
  readonly count: Count | null;
  readonly assumed: readonly Assumption[];
} {
  const told = facts.all("plants").map((fact) => fact.value);
  const of = (stage: (typeof told)[number]["stage"]) =>
    told.findLast((plants) => plants.stage === stage)?.count ?? null;
  const survived = of("survived") ?? of("standing") ?? of("thinned");
  if (survived !== null) return { count: survived, assumed: [] };
  const left = of("left");
  const pulled = facts.all("rogued").map((fact) => fact.value.count?.value ?? null);
  if (left !== null) {
    const sum = pulled.reduce((total, count) => (total === null || count === null ? null : total + count), left.value);
    if (sum === null) return { count: null, assumed: [] };
    if (pulled.length === 0) return { count: left, assumed: [] };
    const count: Count = {
      ...left,
      words: `${left.words} left and ${sum - (left.value ?? 0)} pulled`,
      value: sum,
      low: sum,
      high: sum,
    };
    return {
      count,
      assumed: [
        { code: "standing-from-left-and-pulled", text: `${sum} plants stood: those left and those pulled together.` },
      ],
    };
  }
  const planted = of("planted");
  if (planted !== null) {
    const lost = facts.all("lost").map((fact) => fact.value.count?.value ?? null);
    if (lost.length > 0) return plantedLessLost(planted, lost);
    return {
      count: planted,
      assumed: [{ code: "all-planted-stood", text: "All plants that were planted are taken as standing." }],
    };
  }
  const whole = facts.all("seed-parents").find((fact) => fact.value.of !== null)?.value.of ?? null;
  return { count: whole, assumed: [] };
}

/** "planted 50, frost took 20": 30 stood. Where the loss has no number, neither has what stood. */
function plantedLessLost(planted: Count, lost: readonly (number | null)[]): ReturnType<typeof plantsStanding> {
  const gone = lost.reduce((sum, count) => (sum === null || count === null ? null : sum + count), 0 as number | null);
  if (gone === null || planted.value === null || gone > planted.value) return { count: null, assumed: [] };
  const value = planted.value - gone;
  const count: Count = { ...planted, words: `${planted.words} less ${gone} lost`, value, low: value, high: value };
  return {
    count,
    assumed: [
      { code: "standing-from-planted-and-lost", text: `${value} plants stood: those planted less those lost.` },
    ],
  };
}
