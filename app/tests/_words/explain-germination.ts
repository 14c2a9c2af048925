import type { Explanation, ExplanationInput } from "@/lib/display/explanation";
import { percent, percentSpan, plainNumber } from "@/lib/display/numbers";
import { counted } from "@/lib/display/plurals";
import type { GerminationTest } from "@/lib/science/germination/germination-test";
import type { ReplicateCounts } from "@/lib/science/germination/test-counts";
import { normalWord } from "./reading-in-words";

/** How the germination of some replicates is worked out, stored or as they are typed. */
export function germinationOfReplicates(
  of: {
    /** the test, or what is typed */
    readonly name: string;
    readonly basis: string | null;
    readonly replicates: readonly ReplicateCounts[];
    readonly more?: readonly ExplanationInput[];
  },
  result: GerminationTest,
): Explanation {
  const { name, basis, replicates, more = [] } = of;
  return {
    title: `Germination of ${name}`,
    answer: `${percent(result.germination)}, ${percentSpan(result.exact.low, result.exact.high)}`,
    formula:
      "germination = x / n; exact limits: the x and n at which 2.5 % of tests would show as many, and as few (Beta quantiles)",
    inputs: [
      { name: `x, ${normalWord(basis)}`, value: plainNumber(result.normal) },
      { name: "n, seeds sown", value: plainNumber(result.sown) },
      { name: "replicates", value: replicates.map(({ sown, normal }) => `${normal} of ${sown}`).join(", ") },
      ...more,
    ],
    assumed: result.assumed.map(({ text }) => sentence(text)),
    unsure: unsureOf(result),
    sources: ["Clopper and Pearson 1934, Biometrika 26:404"],
    calc: `echo '${JSON.stringify({ replicates })}' | npm run --silent calc -- germination-test`,
  };
}

function unsureOf({ sown, exact }: GerminationTest): string {
  const width = Math.round((exact.high - exact.low) * 100);
  const more =
    sown < 400 ? " A test of 4 × 100 seeds would narrow it; so would pooling with a like test of the same season." : "";
  return `With ${counted(sown, "seed")} the span is ${width} points wide: a smaller difference than that cannot be told.${more}`;
}

function sentence(text: string): string {
  const head = text.charAt(0).toUpperCase() + text.slice(1);
  return /[.!?]$/.test(head) ? head : `${head}.`;
}
