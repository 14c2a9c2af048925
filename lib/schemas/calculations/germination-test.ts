import { z } from "zod";
import { calculation } from "@/lib/schemas/calculations/calculation";
import { assumedKey, confidenceKey, intervalKey } from "@/lib/schemas/calculations/shared-keys";
import { germinationTest } from "@/lib/science/germination/germination-test";

const shape = z.strictObject({
  replicates: z.array(
    z.strictObject({
      sown: z.int(),
      normal: z.int(),
      abnormal: z.int().optional(),
      hard: z.int().optional(),
      fresh: z.int().optional(),
      dead: z.int().optional(),
    }),
  ),
  confidence: z.number().optional(),
  standard: z.number().optional(),
});

export const germinationTestCalculation = calculation(
  {
    name: "germination-test",
    title: "One germination test, read honestly",
    answers:
      "What share of the lot germinates, between which bounds the true share lies, whether the replicates agree, and whether the lot stands above a given line.",
    whenToDoubt:
      "When the seeds were picked and not scooped, when roots were counted in place of normal seedlings, or the test ended before the last seed made up its mind. " +
      "Ten of ten is not 100 %. Replicates that agree are no proof of good work.",
    formula: [
      "germination = x/n;  viable potential = (normal + hard + fresh)/n",
      "exact: BetaInv(α/2; x, n − x + 1) to BetaInv(1 − α/2; x + 1, n − x)",
      "Wilson: (p + z²/2n ± z √(p(1 − p)/n + z²/4n²)) / (1 + z²/n)",
      "Jeffreys: the middle of Beta(x + ½, n − x + ½)",
      "tolerated range = Q₀.₉₇₅(r, ∞) √(p(1 − p)/n̄);  χ² = Σ (xᵢ − nᵢp)²/(nᵢp(1 − p))",
      "chance above a standard = P(Beta(x + ½, n − x + ½) ≥ standard)",
    ],
    symbols: [
      { symbol: "x, n", meaning: "normal seedlings, seeds sown, over all replicates; p = x/n" },
      { symbol: "α", meaning: "1 − confidence; z the normal deviate beyond which α lies on both sides" },
      { symbol: "Q", meaning: "studentized range of r replicates; n̄ the harmonic mean of the seeds sown" },
    ],
    source: [
      "Clopper & Pearson 1934, Biometrika 26:404-413; Wilson 1927, J. Am. Stat. Assoc. 22:209-212",
      "Brown, Cai & DasGupta 2001, Stat. Sci. 16:101-133 (Jeffreys' interval)",
      "Miles 1963, Proc. ISTA 28:525-686 (tolerated range); exact chance of a range by the multivariate hypergeometric",
    ],
    input: [
      { key: "replicates[].sown", shape: "whole number, 1 or more", meaning: "seeds set up" },
      { key: "replicates[].normal", shape: "whole number, 0 or more", meaning: "normal seedlings at the final count" },
      {
        key: "replicates[].abnormal",
        shape: "whole number",
        meaning: "seedlings that would make no plant",
        usual: "0",
      },
      { key: "replicates[].hard", shape: "whole number", meaning: "seeds that took up no water", usual: "0" },
      { key: "replicates[].fresh", shape: "whole number", meaning: "swollen, alive, not germinated", usual: "0" },
      { key: "replicates[].dead", shape: "whole number", meaning: "dead or mouldy seeds", usual: "0" },
      confidenceKey,
      { key: "standard", shape: "0 to 1", meaning: "a line to hold the lot against" },
    ],
    output: [
      { key: "sown, normal", shape: "seeds", meaning: "over all replicates" },
      { key: "germination", shape: "0 to 1", meaning: "x/n" },
      intervalKey("exact", "never too narrow: for a promise to somebody"),
      intervalKey("wilson", "right on average: for reading"),
      intervalKey("jeffreys", "for deciding"),
      { key: "viablePotential", shape: "0 to 1", meaning: "with hard and fresh seeds" },
      {
        key: "spread",
        shape: "{range, toleratedRange, chiSquare, degrees, pValue, exactP, consistent}, or null",
        meaning: "whether the replicates agree; null for one, exactP null where sizes differ or above 10,000 seeds",
      },
      {
        key: "standard",
        shape: '{value, probabilityAbove, verdict: "above", "below" or "cannot tell"}, or null',
        meaning: "sure at 0.95, else it cannot tell",
      },
      assumedKey,
    ],
  },
  shape,
  {
    replicates: [
      { sown: 50, normal: 46 },
      { sown: 50, normal: 44 },
    ],
    standard: 0.75,
  },
  germinationTest,
);
