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
    return {
      count: planted,
      assumed: [{ code: "all-planted-stood", text: "All plants that were planted are taken as standing." }],
    };
  }
  const whole = facts.all("seed-parents").find((fact) => fact.value.of !== null)?.value.of ?? null;
  return { count: whole, assumed: [] };
}
