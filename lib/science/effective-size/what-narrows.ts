import {
  type CountBounds,
  type EffectiveSizeSpan,
  type EffectiveSizeSpanInput,
  effectiveSizeSpan,
} from "@/lib/science/effective-size/effective-size-span";
import { fewestFor, mayBeApart } from "@/lib/science/effective-size/ends-of-terms";

/** What may be missing of a grow-out's counts. */
export type MissingCount = "pollenParents" | "seedParents" | "seedShares";

/** The span that is left when one missing count is known, at the two ends of what it can be. */
export interface Narrowing {
  readonly missing: MissingCount;
  /** the count at its least (the shares as unlike as can be), and the span then */
  readonly atLeast: { readonly count: number | null; readonly span: Ends };
  /** the count at its most, null without bound (the shares alike), and the span then */
  readonly atMost: { readonly count: number | null; readonly span: Ends };
}

type Ends = Pick<EffectiveSizeSpan, "low" | "high">;

/**
 * Which single missing count narrows a span of effective size most, found by trying each.
 *
 *     for each missing count: the spans left at both ends of what it can be; judged by the wider, high/low
 *
 * Gives those that narrow, the best first; empty where nothing is missing or effectiveSizeSpan refuses. Of equals the first of
 * pollen parents, seed parents, shares. Takes what effectiveSizeSpan takes. Source: our own rule over its bounds.
 */
export function whatNarrows(input: EffectiveSizeSpanInput): Narrowing[] {
  const now = effectiveSizeSpan(input);
  if (!now.ok) return [];
  const width = widthOf(now.value);
  const tried = [
    ...tryCount(input, "pollenParents", pollenRange(input)),
    ...tryCount(input, "seedParents", seedRange(input)),
    ...tryShares(input),
  ];
  return tried
    .map((each) => ({ each, left: Math.max(widthOf(each.atLeast.span), widthOf(each.atMost.span)) }))
    .filter(({ left }) => left < width * (1 - 1e-9))
    .sort((one, other) => one.left - other.left)
    .map(({ each }) => each);
}

function widthOf({ low, high }: Ends): number {
  return high === null ? Number.POSITIVE_INFINITY : high / low;
}

/** The counts that it can be, once the other side is heeded. */
function pollenRange(input: EffectiveSizeSpanInput) {
  const { pollenParents, seedParents, sexes, selfIncompatible, seedShares } = input;
  const separate = sexes === "separate";
  const seed = separate || mayBeApart(input) ? 1 : Math.max(seedParents.low, fewestFor(seedShares ?? "unknown"));
  const pair = selfIncompatible === true && !separate ? 2 : 1;
  return { low: Math.max(pollenParents.low, seed, pair), high: pollenParents.high };
}

function seedRange(input: EffectiveSizeSpanInput): CountBounds {
  const { pollenParents, seedParents, sexes, seedShares } = input;
  const low = Math.max(seedParents.low, fewestFor(seedShares ?? "unknown"));
  if (sexes === "separate" || mayBeApart(input) || pollenParents.high === null) return { low, high: seedParents.high };
  return { low, high: Math.min(seedParents.high ?? pollenParents.high, pollenParents.high) };
}

function tryCount(
  input: EffectiveSizeSpanInput,
  missing: "pollenParents" | "seedParents",
  range: CountBounds,
): Narrowing[] {
  if (range.low === range.high) return [];
  const at = (count: number | null): Ends | null => {
    // Without bound the ends meet where the terms of the uncounted plants go to nothing.
    const known = count === null ? { low: withoutBound, high: null } : { low: count, high: count };
    const span = effectiveSizeSpan({ ...input, [missing]: known });
    return span.ok ? span.value : null;
  };
  const [least, most] = [at(range.low), at(range.high)];
  if (!least || !most) return [];
  return [{ missing, atLeast: { count: range.low, span: least }, atMost: { count: range.high, span: most } }];
}

/** So many plants that one more or less moves nothing. */
const withoutBound = 1_000_000_000;

function tryShares(input: EffectiveSizeSpanInput): Narrowing[] {
  if (input.seedShares !== undefined && input.seedShares !== "unknown") return [];
  const alike = effectiveSizeSpan({ ...input, seedShares: "equal" });
  const unlike = effectiveSizeSpan({ ...input, seedShares: { largest: 1 } });
  if (!alike.ok || !unlike.ok) return [];
  return [
    {
      missing: "seedShares",
      atLeast: { count: null, span: unlike.value },
      atMost: { count: null, span: alike.value },
    },
  ];
}
