/** Seed taken of a lot, as it is weighed and as it is counted. */
export interface AmountOfPart {
  readonly grams: number;
  readonly seeds: number;
}

/**
 * An amount of a lot in grams and in seeds, joined by its thousand-seed weight W in grams.
 *
 *     seeds = 1000 · grams / W
 *
 * Source: the definition of the thousand-seed weight.
 */
export function amountOfPart(amount: number, unit: "g" | "seeds", thousandSeedGrams: number): AmountOfPart {
  if (unit === "g") return { grams: amount, seeds: (1000 * amount) / thousandSeedGrams };
  return { grams: (amount * thousandSeedGrams) / 1000, seeds: amount };
}
