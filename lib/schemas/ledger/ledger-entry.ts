import { z } from "zod";
import type { Hemisphere } from "@/lib/science/dates/fuzzy-date";
import { day, decimal, name, neededField, oneOf, openField, words } from "../lots/form-fields";
import { ledgerKinds } from "../notebook/kinds";

/** What a steward enters at the desk; blended-in and blended-out are written by the blend itself. */
export const deskKinds = ["received", "harvested", "sown", "tested", "given", "discarded", "weighed"] as const;
export type DeskKind = (typeof deskKinds)[number];

/** What an amount at the desk is counted in: grams, or seeds where the lot's own seed weight is known. */
export const deskUnits = ["g", "seeds"] as const;

const whenDone = "write the day, or what is known of it, as 2024-05-20, 2024-05 or 2024";

function entryFields(hemisphere: Hemisphere) {
  return {
    on: neededField(day(hemisphere), whenDone),
    amount: neededField(decimal({ atLeast: 0 }), "write how much, as 12.5"),
    unit: neededField(oneOf(deskUnits), "choose grams or seeds"),
    other: openField(name),
    notes: openField(words),
  };
}

/** One entry of a lot's ledger as it is typed in. */
export function ledgerEntrySchema(hemisphere: Hemisphere) {
  return z.object({ ...entryFields(hemisphere), kind: neededField(oneOf(deskKinds), "choose what was done") });
}

export type LedgerEntryInput = z.output<ReturnType<typeof ledgerEntrySchema>>;

/** A correction: the entry as it should have been, and why. */
export function ledgerCorrectionSchema(hemisphere: Hemisphere) {
  return z.object({
    ...entryFields(hemisphere),
    kind: neededField(oneOf(ledgerKinds), "choose what was done"),
    reason: neededField(words, "say in a few words what was wrong"),
  });
}

export type LedgerCorrectionInput = z.output<ReturnType<typeof ledgerCorrectionSchema>>;

/** A mistaken entry that never should have stood. */
export const takeBackSchema = z.object({ reason: neededField(words, "say in a few words what was wrong") });
