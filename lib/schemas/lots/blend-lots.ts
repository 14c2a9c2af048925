import { z } from "zod";
import type { Hemisphere } from "@/lib/science/dates/fuzzy-date";
import { type Outcome, refusal, refused } from "@/lib/science/outcome";
import { day, decimal, name, neededField, oneOf, openField, words } from "./form-fields";

export const seedUnits = ["g", "seeds"] as const;

/** A blend takes at least two lots, and no more than a person can weigh out at one table. */
export const mostParts = 24;

/** A share as a person writes it, in percent: `80` or `80 %`. */
function percentTyped(text: string): Outcome<number> {
  const read = decimal({ atLeast: 0, atMost: 100 })(text.replace(/%\s*$/, "").trim());
  if (!read.ok) return read;
  if (read.value > 0) return { ok: true, value: read.value / 100 };
  return refused(refusal("nothing-lives", [], text, "adds no living seed", "leave the lot out, or test it"));
}

/** Seed of several lots mixed into one: what is taken of each, and why. */
export function blendSchema(hemisphere: Hemisphere) {
  return z.object({
    parts: z
      .array(
        z.object({
          lot: neededField(name, "choose a lot"),
          amount: neededField(decimal({ above: 0 }), "write how much of it goes in"),
          unit: neededField(oneOf(seedUnits), "choose grams or seeds"),
          /** of a lot that was never tested: the share that a person takes to live */
          living: openField(percentTyped),
        }),
      )
      .max(mostParts),
    number: openField(name),
    holder: openField(name),
    newHolder: openField(name),
    on: neededField(day(hemisphere), "write when it was mixed"),
    reason: neededField(words, "say in a few words why they are mixed"),
    override: openField(words),
    notes: openField(words),
  });
}

export type BlendInput = z.output<ReturnType<typeof blendSchema>>;

/** Part of a lot under a number of its own. */
export function splitSchema(hemisphere: Hemisphere) {
  return z.object({
    amount: neededField(decimal({ above: 0 }), "write how much is parted"),
    unit: neededField(oneOf(seedUnits), "choose grams or seeds"),
    on: neededField(day(hemisphere), "write when it was parted"),
    number: openField(name),
    holder: openField(name),
    newHolder: openField(name),
    place: openField(name),
    container: openField(name),
    reason: openField(words),
    override: openField(words),
    notes: openField(words),
  });
}

export type SplitInput = z.output<ReturnType<typeof splitSchema>>;
