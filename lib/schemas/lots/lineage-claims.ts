import { z } from "zod";
import type { Hemisphere } from "@/lib/science/dates/fuzzy-date";
import { count, day, decimal, name, neededField, oneOf, openField, words } from "./form-fields";

/** What somebody says of where a lot is from, where the records do not show it. */
export const claimKinds = ["descends from", "same as", "unknown before"] as const;
export type ClaimKind = (typeof claimKinds)[number];

/** How a claim stands: nobody has judged it, it is believed, or it is set aside with a reason. */
export const claimStandings = ["open", "believed", "set aside"] as const;
export type ClaimStanding = (typeof claimStandings)[number];

/** How sure the teller is. */
export const claimSureness = ["first hand", "told by the person", "told by another", "from a label", "guess"] as const;

/** What is known of how two founder lots are related. */
export const kinshipKinds = ["unrelated", "same source", "coancestry"] as const;
export type KinshipKind = (typeof kinshipKinds)[number];

/** A claim as it is told. `parent` is the number of the other lot; `story` takes the long form of it in the teller's words. */
export function claimSchema(hemisphere: Hemisphere) {
  return z.object({
    kind: neededField(oneOf(claimKinds), "choose what is said"),
    parent: openField(name),
    generationsFirst: openField(count),
    generationsLast: openField(count),
    words: neededField(words, "write what was said, in the teller’s words"),
    teller: openField(name),
    toldOn: openField(day(hemisphere)),
    howSure: openField(oneOf(claimSureness)),
    story: openField(words),
  });
}

export type ClaimInput = z.output<ReturnType<typeof claimSchema>>;

/** A claim put right, and why. */
export function correctClaimSchema(hemisphere: Hemisphere) {
  return claimSchema(hemisphere).extend({ why: neededField(words, "say in a few words what was wrong") });
}

export type CorrectClaimInput = z.output<ReturnType<typeof correctClaimSchema>>;

/** How a claim stands from now on. */
export const JudgeClaimSchema = z.object({
  standing: neededField(oneOf(claimStandings), "choose how it stands"),
  reason: openField(words),
});

export type JudgeClaimInput = z.output<typeof JudgeClaimSchema>;

/** How two founder lots are related, and how that is known. */
export const KinshipSchema = z.object({
  first: neededField(name, "choose the first lot"),
  second: neededField(name, "choose the second lot"),
  kind: neededField(oneOf(kinshipKinds), "choose how they are related"),
  coancestry: openField(decimal({ atLeast: 0, atMost: 1 })),
  how: neededField(words, "say how that is known"),
});

export type KinshipInput = z.output<typeof KinshipSchema>;

/** The same, put right: the two lots stay. */
export const CorrectKinshipSchema = KinshipSchema.omit({ first: true, second: true }).extend({
  why: neededField(words, "say in a few words what was wrong"),
});

export type CorrectKinshipInput = z.output<typeof CorrectKinshipSchema>;
