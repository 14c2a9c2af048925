import { z } from "zod";
import { calculation } from "@/lib/schemas/calculations/calculation";
import { assumedKey } from "@/lib/schemas/calculations/shared-keys";
import { germinationSpeed } from "@/lib/science/germination/germination-speed";

const shape = z.strictObject({
  sown: z.int(),
  counts: z.array(z.strictObject({ day: z.number(), newlyGerminated: z.int() })),
});

export const germinationSpeedCalculation = calculation(
  {
    name: "germination-speed",
    title: "How quickly a lot germinates",
    answers:
      "After how many days half of the seeds that germinate have done so, and how long they take on average. Old seed slows down before it dies.",
    whenToDoubt:
      "When there were only two count days: then the half lies somewhere between them, and no more can be said. " +
      "When seeds were still coming at the last count. Compare only tests of one size, one warmth and the same count days.",
    formula: [
      "t50: on the straight line between the running totals on either side of half the final count",
      "mean time = Σ n·day / Σ n",
      "index = Σ n/day",
    ],
    symbols: [{ symbol: "n", meaning: "seeds that newly germinated on a count day" }],
    source: [
      "Farooq et al. 2005, J. Integr. Plant Biol. 47:187-193 (t50)",
      "Ellis & Roberts 1981, Seed Sci. Technol. 9:373-409 (mean time)",
      "Maguire 1962, Crop Sci. 2:176-177 (index)",
    ],
    input: [
      { key: "sown", shape: "whole number, 1 or more", meaning: "seeds set up" },
      { key: "counts[].day", shape: "above 0, ascending", meaning: "days after setting up, whole or not" },
      {
        key: "counts[].newlyGerminated",
        shape: "whole number, 0 or more",
        meaning: "new that day, never a running total",
      },
    ],
    output: [
      { key: "germinated", shape: "seeds", meaning: "in all" },
      { key: "finalShare", shape: "0 to 1", meaning: "of those sown" },
      { key: "t50", shape: "days, or null", meaning: "until half of those that germinated had; null where none did" },
      { key: "meanTime", shape: "days, or null", meaning: "on average" },
      { key: "index", shape: "seeds a day, or null", meaning: "the larger, the quicker" },
      assumedKey,
    ],
  },
  shape,
  {
    sown: 50,
    counts: [
      { day: 5, newlyGerminated: 4 },
      { day: 6, newlyGerminated: 17 },
      { day: 7, newlyGerminated: 10 },
    ],
  },
  germinationSpeed,
);
