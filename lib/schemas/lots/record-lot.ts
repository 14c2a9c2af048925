import { z } from "zod";
import type { Hemisphere } from "@/lib/science/dates/fuzzy-date";
import { day, decimal, name, neededField, oneOf, openField, words } from "./form-fields";

/** Where a lot came from that is entered by hand. `harvest` names a grow-out that is on record; the others are founder lots. */
export const lotOrigins = ["received", "purchased", "found", "own grow-out", "harvest"] as const;
export type LotOrigin = (typeof lotOrigins)[number];

export const lotTreatments = ["none", "hot water", "chemical", "unknown"] as const;
export const founderLineChoices = ["one", "many"] as const;
export const isolationGrades = ["controlled", "isolated", "partly", "open", "unknown"] as const;
export const identityGrades = [
  "grown true and seen by the steward",
  "told by a keeper",
  "from a label",
  "guessed from seed",
  "unknown",
] as const;

/** Where a lot stands in its life. "Dead" needs a test, and nothing comes back from discarded. */
export const lotStatuses = [
  "quarantine",
  "usable",
  "share freely",
  "circle only",
  "closed",
  "hold",
  "not for seed",
  "finished",
  "dead",
  "discarded",
] as const;
export type LotStatus = (typeof lotStatuses)[number];

/** How the first amount of a new lot is known. */
export const firstEntryKinds = ["weighed", "received", "harvested"] as const;

const share = decimal({ atLeast: 0, atMost: 1 });

function toldOfLot(hemisphere: Hemisphere) {
  return {
    holder: openField(name),
    /** the name of a holder who is no steward here yet */
    newHolder: openField(name),
    year: openField(day(hemisphere)),
    yearWords: openField(words),
    thousandSeedGrams: openField(decimal({ above: 0 })),
    founderLines: openField(oneOf(founderLineChoices)),
    inbreeding: openField(share),
    treatment: openField(oneOf(lotTreatments)),
    treatmentSubstance: openField(words),
    identityGrade: openField(oneOf(identityGrades)),
    donorNumber: openField(name),
    notes: openField(words),
  };
}

/** A lot as a steward enters it by hand, with what is in the jar and the story it came with. */
export function recordLotSchema(hemisphere: Hemisphere) {
  return z.object({
    ...toldOfLot(hemisphere),
    number: openField(name),
    variety: neededField(name, "write the variety's name"),
    origin: neededField(oneOf(lotOrigins), "choose where the seed came from"),
    growOut: openField(name),
    giver: openField(name),
    amount: openField(decimal({ atLeast: 0 })),
    amountKind: neededField(oneOf(firstEntryKinds), "choose how the amount is known"),
    amountOn: openField(day(hemisphere)),
    story: openField(words),
  });
}

export type RecordLotInput = z.output<ReturnType<typeof recordLotSchema>>;

/** Fields of a lot that may be put right, and why. Its number stays for life. */
export function correctLotSchema(hemisphere: Hemisphere) {
  return z.object({
    ...toldOfLot(hemisphere),
    status: openField(oneOf(lotStatuses)),
    statusReason: openField(words),
    isolationGrade: openField(oneOf(isolationGrades)),
    isolationReasons: openField(words),
    reason: neededField(words, "say in a few words why it is changed"),
  });
}

export type CorrectLotInput = z.output<ReturnType<typeof correctLotSchema>>;
