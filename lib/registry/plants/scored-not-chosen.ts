/** How many plants of a grow-out are scored, and how many of those are marked keep. */
export interface ScoredPlants {
  readonly scored: number;
  readonly kept: number;
}

/** True where plants were scored, so that there is a choice, and none of them is marked keep yet. */
export function scoredNotChosen({ scored, kept }: ScoredPlants): boolean {
  return scored >= 2 && kept === 0;
}
