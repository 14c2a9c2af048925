import { dateInWords } from "@/lib/display/dates";
import type { Explanation } from "@/lib/display/explanation";
import { percent, percentSpan, plainNumber, probability } from "@/lib/display/numbers";
import { counted } from "@/lib/display/plurals";
import type { Compared } from "@/lib/registry/germination-tests/compare-with-earlier";
import type { ReadTest } from "@/lib/registry/germination-tests/read-germination-test";
import type { GerminationTest } from "@/lib/science/germination/germination-test";
import type { ReplicateSpread } from "@/lib/science/germination/replicate-spread";
import { normalWord } from "../../_words/reading-in-words";

const clopperPearson = "Clopper and Pearson 1934, Biometrika 26:404";

/** How the germination of a test is worked out. */
export function germinationExplanation({ test, lot, replicates }: ReadTest, result: GerminationTest): Explanation {
  const given = {
    replicates: replicates.map(({ sown, totals }) => {
      const told = Object.entries(totals.sums).filter(([, seeds]) => seeds !== null);
      return { sown, ...Object.fromEntries(told) };
    }),
  };
  return {
    title: `Germination of ${test.name}`,
    answer: `${percent(result.germination)}, ${percentSpan(result.exact.low, result.exact.high)}`,
    formula:
      "germination = x / n; exact limits: the x and n at which 2.5 % of tests would show as many, and as few (Beta quantiles)",
    inputs: [
      { name: `x, ${normalWord(test.basis)}`, value: plainNumber(result.normal) },
      { name: "n, seeds sown", value: plainNumber(result.sown) },
      {
        name: "replicates",
        value: replicates.map(({ sown, totals }) => `${totals.sums.normal ?? 0} of ${sown}`).join(", "),
      },
      { name: "lot", value: lot.number, href: `/lots/${lot.id}` },
    ],
    assumed: result.assumed.map((each) => sentence(each.text)),
    unsure: unsureOf(result),
    sources: [clopperPearson],
    calc: `echo '${JSON.stringify(given)}' | npm run --silent calc -- germination-test`,
  };
}

function unsureOf({ sown, exact }: GerminationTest): string {
  const width = Math.round((exact.high - exact.low) * 100);
  const more =
    sown < 400 ? " A test of 4 × 100 seeds would narrow it; so would pooling with a like test of the same season." : "";
  return `With ${counted(sown, "seed")} the span is ${width} points wide: a smaller difference than that cannot be told.${more}`;
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
