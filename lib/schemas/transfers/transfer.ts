import { z } from "zod";
import type { Hemisphere } from "@/lib/science/dates/fuzzy-date";
import { deskUnits } from "../ledger/ledger-entry";
import { day, decimal, name, neededField, oneOf, openField, ticked, words } from "../lots/form-fields";
import { identityGrades, isolationGrades, lotTreatments } from "../lots/record-lot";

/** How seed goes out at the desk. A sale is only read from what others wrote down. */
export const givingKinds = ["gift", "loan", "return", "exchange", "safety duplicate", "to a library"] as const;
export type GivingKind = (typeof givingKinds)[number];

/** How seed comes in. */
export const takingKinds = ["return", "gift", "exchange", "loan"] as const;
export type TakingKind = (typeof takingKinds)[number];

/** What came of growing a lot apart and beside the home strain. Source: trade.md 3.10. */
export const comparisons = ["same", "own strain", "different", "spoiled"] as const;
export type Comparison = (typeof comparisons)[number];

const whenDone = "write the day, or what is known of it, as 2024-05-20, 2024-05 or 2024";
const amount = neededField(decimal({ above: 0 }), "write how much, as 12.5");
const unit = neededField(oneOf(deskUnits), "choose grams or seeds");

/** Keys of what was ticked as told. */
const told = z.array(z.string()).default([]);

/** Seed that leaves a holder's hand, as it is typed at the desk. Who gets it: one of holder, newHolder, toWords. */
export function giveSchema(hemisphere: Hemisphere) {
  return z.object({
    kind: neededField(oneOf(givingKinds), "choose how it goes"),
    on: neededField(day(hemisphere), whenDone),
    amount,
    unit,
    holder: openField(name),
    newHolder: openField(name),
    /** somebody outside whose name is not kept */
    toWords: openField(words),
    /** the new lot's number in the other hand */
    number: openField(name),
    purpose: openField(words),
    conditions: openField(words),
    promise: openField(words),
    replyDue: openField(day(hemisphere)),
    told,
    toldWords: openField(words),
    /** of a safety duplicate: where it stands */
    place: openField(name),
    building: openField(name),
    /** why it is given although a rule stands against it */
    override: openField(words),
    note: openField(words),
  });
}

export type GiveInput = z.output<ReturnType<typeof giveSchema>>;

/** Seed that comes in: from whom, of which variety, with its story. Always into quarantine. */
export function takeInSchema(hemisphere: Hemisphere) {
  return z.object({
    kind: neededField(oneOf(takingKinds), "choose how it came"),
    on: neededField(day(hemisphere), whenDone),
    variety: neededField(name, "write the variety's name"),
    holder: openField(name),
    newHolder: openField(name),
    /** a steward on record who brings it */
    giver: openField(name),
    /** or somebody else, as it was told */
    giverWords: openField(words),
    /** number of the giver's lot, where it is on record: then its parents are known */
    fromLot: openField(name),
    /** id of the transfer that this answers: a loan that comes back */
    answers: openField(words),
    /** what was promised with it is kept by this */
    keepsPromise: ticked,
    number: openField(name),
    year: openField(day(hemisphere)),
    yearWords: openField(words),
    /** empty: nobody weighed it yet */
    amount: openField(decimal({ above: 0 })),
    unit,
    thousandSeedGrams: openField(decimal({ above: 0 })),
    /** the strain it is said to be; a name that is new here becomes one */
    strain: openField(name),
    treatment: openField(oneOf(lotTreatments)),
    treatmentSubstance: openField(words),
    identityGrade: openField(oneOf(identityGrades)),
    isolationGrade: openField(oneOf(isolationGrades)),
    isolationReasons: openField(words),
    donorNumber: openField(name),
    story: openField(words),
    /** the giver said nothing: a different fact from nobody asking */
    nothingTold: ticked,
    /** what was seen of insects, mould, dark horns, soil, weed seed */
    looked: openField(words),
  });
}

export type TakeInInput = z.output<ReturnType<typeof takeInSchema>>;

/** A transfer put right: both sides of the ledger follow. */
export function correctTransferSchema(hemisphere: Hemisphere) {
  return z.object({
    on: neededField(day(hemisphere), whenDone),
    amount: openField(decimal({ above: 0 })),
    unit,
    purpose: openField(words),
    conditions: openField(words),
    told: openField(words),
    replyDue: openField(day(hemisphere)),
    note: openField(words),
    reason: neededField(words, "say in a few words what was wrong"),
  });
}

export type CorrectTransferInput = z.output<ReturnType<typeof correctTransferSchema>>;

/** A promise that was kept, and when. */
export function keptPromiseSchema(hemisphere: Hemisphere) {
  return z.object({ on: neededField(day(hemisphere), whenDone) });
}

/** A promise that nobody waits for any more, and why. */
export const letGoSchema = z.object({ reason: neededField(words, "say in a few words why it is let go") });

/** An answer that came from whoever got the seed. */
export function replySchema(hemisphere: Hemisphere) {
  return z.object({
    on: neededField(day(hemisphere), whenDone),
    words: neededField(words, "write what they said"),
    still: openField(oneOf(["yes", "no", "unknown"] as const)),
  });
}

export type ReplyInput = z.output<ReturnType<typeof replySchema>>;
