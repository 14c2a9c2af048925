import { z } from "zod";
import { calculation } from "@/lib/schemas/calculations/calculation";
import { assumedKey } from "@/lib/schemas/calculations/shared-keys";
import { scorerAgreement } from "@/lib/science/scoring/scorer-agreement";

const score = z.int();
const shape = z.strictObject({
  scale: z.tuple([score, score]),
  pairs: z.array(z.tuple([score, score])),
  weights: z.enum(["quadratic", "linear"]).optional(),
});

export const scorerAgreementCalculation = calculation(
  {
    name: "scorer-agreement",
    title: "Do two scorers see the same",
    answers:
      "How often two people (or one person twice) give a plant the same score, and how far they agree beyond what chance would give.",
    whenToDoubt:
      "With few plants, or when nearly all have one score: then chance alone agrees. Below 20 plants kappa is not shown. " +
      "Quadratic and linear kappa are not on one scale. One who always scores a point higher still ranks the plants alike: look at the mean difference.",
    formula: ["w = 1 − (|i − j|/(K − 1))² or ¹", "κ = (Po − Pe)/(1 − Pe),  Po = Σ w p_ij,  Pe = Σ w p_i. p_.j"],
    symbols: [
      { symbol: "K", meaning: "scores of the whole scale" },
      { symbol: "p_ij", meaning: "share of the plants scored i by the one and j by the other" },
    ],
    source: [
      "Cohen 1968, Psychol. Bull. 70:213-220",
      "Fleiss, Cohen & Everitt 1969, Psychol. Bull. 72:323-327 (standard error)",
    ],
    input: [
      { key: "scale", shape: "[lowest, highest], whole", meaning: "scores that may be given" },
      { key: "pairs", shape: "list of [score, score]", meaning: "each plant by the one and the other" },
      { key: "weights", shape: '"quadratic" or "linear"', meaning: "how far apart counts", usual: "quadratic" },
    ],
    output: [
      { key: "exact", shape: "0 to 1", meaning: "share with the same score" },
      { key: "withinOne", shape: "0 to 1", meaning: "share within a point" },
      { key: "meanDifference", shape: "points", meaning: "second less first" },
      {
        key: "kappa",
        shape: "up to 1, or null",
        meaning: "agreement beyond chance; null below 20 plants or where both always gave one score",
      },
      { key: "standardError", shape: "number, or null", meaning: "of kappa" },
      assumedKey,
    ],
  },
  shape,
  {
    scale: [1, 9],
    pairs: [
      [3, 3],
      [5, 6],
      [6, 6],
    ],
  },
  scorerAgreement,
);
