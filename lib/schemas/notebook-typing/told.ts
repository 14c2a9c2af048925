import { z } from "zod";

const number = z.number("is not a number; write figures").min(0, "is below nothing; write 0 or more").nullable();

/**
 * A number as somebody told it. "40" has value, low and high 40; "about 40" the same and `approximate`; "30-40" no value, low 30 and
 * high 40; "over 40" low 40 alone; "a handful" words alone. What was not said is null.
 */
export const ToldSchema = z.strictObject({
  words: z.string().max(500, "is longer than 500 characters; keep the rest in the line"),
  value: number,
  low: number,
  high: number,
  approximate: z.boolean(),
});
export type Told = z.infer<typeof ToldSchema>;

export const toldUnits = ["g", "seeds", "ears", "heads", "pods", "fruits", "packets"] as const;

/** An amount of seed as told; weights in grams. `unit` null: only words were given ("a jarful"). */
export const ToldAmountSchema = ToldSchema.extend({ unit: z.enum(toldUnits).nullable() });
export type ToldAmount = z.infer<typeof ToldAmountSchema>;

/** How sure a told number is, in words that stand beside it; null where it is simply a number. */
export function howSureTold({ value, low, high, approximate }: Told): string | null {
  if (value !== null) return approximate ? "about" : null;
  if (low !== null && high !== null) return `between ${low} and ${high}`;
  if (low !== null) return `at least ${low}`;
  return high === null ? "words alone" : `at most ${high}`;
}
