import { z } from "zod";
import { count, decimal, neededField, oneOf, openField, words } from "../lots/form-fields";
import { shareInPercent } from "./plan-grow-out";

/** How foreign pollen was found, or suspected. */
export const pollenFindings = [
  "off-types in the next sowing",
  "kernels of another colour counted",
  "a neighbour seen in flower",
  "a test",
  "a guess",
] as const;
export type PollenFinding = (typeof pollenFindings)[number];

/** The findings that come of counting seeds or seedlings. */
export const countedFindings: readonly PollenFinding[] = pollenFindings.slice(0, 2);

const atLeastNone = decimal({ atLeast: 0 });

/**
 * What is said of foreign pollen in a grow-out: the share of the seed with a foreign father, typed in percent or worked out of what was counted,
 * and how it was found.
 */
export const ForeignPollenSchema = z.object({
  percent: openField(decimal({ atLeast: 0, atMost: 100 })),
  finding: neededField(oneOf(pollenFindings), "choose how it was found"),
  sampled: openField(count),
  found: openField(atLeastNone),
  carrying: openField(shareInPercent),
  words: openField(words),
  /** why what stood there is replaced */
  why: openField(words),
});

export type ForeignPollenInput = z.output<typeof ForeignPollenSchema>;
