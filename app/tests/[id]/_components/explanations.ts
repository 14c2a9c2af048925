import { dateInWords } from "@/lib/display/dates";
import type { Explanation } from "@/lib/display/explanation";
import { plainNumber, probability } from "@/lib/display/numbers";
import type { Compared } from "@/lib/registry/germination-tests/compare-with-earlier";
import type { ReadTest } from "@/lib/registry/germination-tests/read-germination-test";
import type { GerminationTest } from "@/lib/science/germination/germination-test";
import type { ReplicateSpread } from "@/lib/science/germination/replicate-spread";
import type { ReplicateCounts } from "@/lib/science/germination/test-counts";
import { germinationOfReplicates } from "../../_words/explain-germination";

/** How the germination of a test is worked out. */
export function germinationExplanation({ test, lot, replicates }: ReadTest, result: GerminationTest): Explanation {
  const counts = replicates.map(({ sown, totals: { sums } }): ReplicateCounts => {
    const { normal, abnormal, hard, fresh, dead } = sums;
    const told = Object.entries({ abnormal, hard, fresh, dead }).filter(([, seeds]) => seeds !== null);
    return { sown, normal: normal ?? 0, ...Object.fromEntries(told) };
  });
  const more = [{ name: "lot", value: lot.number, href: `/lots/${lot.id}` }];
  return germinationOfReplicates({ name: test.name, basis: test.basis, replicates: counts, more }, result);
}

/** How a test is told from the one before it. */
export function comparedExplanation(read: ReadTest, compared: Extract<Compared, { how: "compared" }>): Explanation {
  const { earlier, comparison } = compared;
  const before = { sown: earlier.totals.sown, normal: earlier.totals.sums.normal ?? 0 };
  const now = { sown: read.totals.sown, normal: read.totals.sums.normal ?? 0 };
  const points = (share: number) => `${share < 0 ? "−" : "+"}${plainNumber(Math.abs(share) * 100, 1)}`;
  return {
    title: `Difference from ${earlier.name}`,
    answer: `${points(comparison.difference)} points, ${points(comparison.interval.low)} to ${points(comparison.interval.high)}`,
    formula: "changed where Fisher’s exact p ≤ 0.05; the span of the difference from the two Wilson intervals",
    inputs: [
      {
        name: `before, ${dateInWords(earlier.on)}`,
        value: `${before.normal} of ${before.sown}`,
        href: `/tests/${earlier.id}`,
      },
      { name: "now", value: `${now.normal} of ${now.sown}` },
      { name: "exact p", value: probability(comparison.fisherP) },
    ],
    assumed: [
      "The two tests were set up alike: warmth, days, and what was counted.",
      ...comparison.assumed.map((each) => sentence(each.text)),
      ...(earlier.basis === null || read.test.basis === null
        ? ["What was counted is not written down for both; it is taken as the same."]
        : []),
    ],
    sources: ["Fisher’s exact test, two-sided", "Newcombe 1998, Statistics in Medicine 17:873"],
    calc: `echo '${JSON.stringify({ a: before, b: now })}' | npm run --silent calc -- germination-compare`,
  };
}

/** Whether the replicates are alike, and by which rule. */
export function spreadExplanation(spread: ReplicateSpread, title: string): Explanation {
  const points = (share: number) => `${plainNumber(share * 100, 1)} points`;
  const exact = spread.exactP !== null;
  return {
    title,
    answer: spread.consistent ? "alike" : "not alike",
    formula: exact
      ? "the chance of a range this wide among like replicates, given what came up in all; not alike at 0.025 or less"
      : "tolerated range = Q₀.₉₇₅(r) · √(p(1 − p) / n̄), where the replicates are not of one size",
    inputs: [
      { name: "widest difference", value: points(spread.range) },
      ...(exact ? [{ name: "chance of it", value: probability(spread.exactP) }] : []),
      { name: "tolerated by Miles’s formula", value: points(spread.toleratedRange) },
      {
        name: `χ² on ${spread.degrees}`,
        value: `${plainNumber(spread.chiSquare, 2)}, p ${probability(spread.pValue)}`,
      },
    ],
    assumed: [],
    unsure: "Replicates counted by hand are often too alike: well within the range is no proof of careful work.",
    sources: ["Miles 1963, Proc. ISTA 28:525", "counts multivariate hypergeometric under one germination"],
    method: "germination-test",
  };
}

function sentence(text: string): string {
  const head = text.charAt(0).toUpperCase() + text.slice(1);
  return /[.!?]$/.test(head) ? head : `${head}.`;
}
