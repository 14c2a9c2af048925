import { z } from "zod";
import { name, neededField, oneOf, ticked, words } from "./form-fields";

/** Which of two records of one lot leads: the one that the page is about, or the other. */
export const leadingChoices = ["this", "other"] as const;

/** Two records are said to be of one lot. */
export const MergeLotsSchema = z.object({
  other: neededField(name, "write the number or the label code of the other record"),
  leads: neededField(oneOf(leadingChoices), "choose which of the two leads"),
  /** where the two say different things of the parents: those of the leading record hold */
  parentage: ticked,
  why: neededField(words, "say how it is known that the seed is the same"),
});

export type MergeLotsInput = z.output<typeof MergeLotsSchema>;

/** Why something is taken back or answered. */
export const WhySchema = z.object({ why: neededField(words, "say in a few words why") });
