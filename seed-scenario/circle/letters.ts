import type { PersonName } from "./people";

/** The years in whose January a letter went round: who still has what? */
export const letterYears: readonly number[] = [1999, 2004, 2009, 2013, 2017, 2020, 2022, 2024, 2026];

/** Somebody of whom nothing was heard about a variety (by its word) from a year on, and who had no jar of it in hand. */
interface Silence {
  readonly who: PersonName;
  readonly word: string;
  readonly from: number;
}

const silences: readonly Silence[] = [
  { who: "Ambrey Stallwood", word: "Pocket", from: 2022 },
  { who: "Jossa Pellinder", word: "Tollgate", from: 2023 },
  { who: "Corvane Ashlock", word: "Anvil", from: 2023 },
  { who: "Orlo Brackstane", word: "Coal", from: 2023 },
];

export function silent(who: string, word: string, year: number): boolean {
  return silences.some((each) => each.who === who && each.word === word && year >= each.from);
}
