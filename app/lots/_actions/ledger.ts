"use server";

import { gramsTyped } from "@/lib/display/units";
import { correctLedgerEntry, takeBackLedgerEntry } from "@/lib/registry/ledger/correct-ledger-entry";
import { recordLedgerEntry } from "@/lib/registry/ledger/record-ledger-entry";
import { recordSeedWeighing } from "@/lib/registry/ledger/record-seed-weighing";
import { ledgerCorrectionSchema, ledgerEntrySchema, takeBackSchema } from "@/lib/schemas/ledger/ledger-entry";
import { portionsAtOnce, seedWeighingSchema } from "@/lib/schemas/ledger/seed-weighing";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import type { Settings } from "@/lib/schemas/settings";
import { current } from "../../_session/current";
import { answerOf, type FormAnswer, textsOf } from "../_form/form-answer";
import { unitsOf } from "../_words/units-of";

/** Writes an entry into a lot's ledger. */
export async function writeEntry(lotId: string, _before: FormAnswer, form: FormData): Promise<FormAnswer> {
  const { db, actor, settings, today } = await current("desk");
  const typed = textsOf(form);
  const input = parseForm(ledgerEntrySchema(settings.hemisphere), typed);
  const outcome = input.ok ? await recordLedgerEntry(db, actor, lotId, inGrams(input.value, settings), today) : input;
  return answerOf(typed, outcome, ({ value }) => `/lots/${lotId}?wrote=${value.entryId}#ledger`);
}

/** Puts an entry in the place of a mistaken one. */
export async function putEntryRight(
  lotId: string,
  entryId: string,
  _before: FormAnswer,
  form: FormData,
): Promise<FormAnswer> {
  const { db, actor, settings, today } = await current("desk");
  const typed = textsOf(form);
  const input = parseForm(ledgerCorrectionSchema(settings.hemisphere), typed);
  const outcome = input.ok
    ? await correctLedgerEntry(db, actor, entryId, inGrams(input.value, settings), today)
    : input;
  return answerOf(typed, outcome, ({ value }) => `/lots/${lotId}?wrote=${value.entryId}#ledger`);
}

/** Takes a mistaken entry back altogether. */
export async function takeEntryBack(
  lotId: string,
  entryId: string,
  _before: FormAnswer,
  form: FormData,
): Promise<FormAnswer> {
  const { db, actor } = await current("desk");
  const typed = textsOf(form);
  const input = parseForm(takeBackSchema, typed);
  const outcome = input.ok ? await takeBackLedgerEntry(db, actor, entryId, input.value.reason) : input;
  return answerOf(typed, outcome, () => `/lots/${lotId}#ledger`);
}

/** Takes a lot's seed weight from portions that were counted and weighed. */
export async function weighSeeds(lotId: string, _before: FormAnswer, form: FormData): Promise<FormAnswer> {
  const { db, actor, settings } = await current("desk");
  const typed = textsOf(form);
  const counts = Array.from({ length: portionsAtOnce }, (_, index) => ({
    seeds: typed[`counts.${index}.seeds`],
    grams: typed[`counts.${index}.grams`],
  }));
  const input = parseForm(seedWeighingSchema(settings.hemisphere), { ...typed, counts });
  const outcome = input.ok ? await recordSeedWeighing(db, actor, lotId, input.value) : input;
  return answerOf(typed, outcome, () => `/lots/${lotId}#seed-weight`);
}

/** An amount typed in the steward's unit of weight is stored in grams. */
function inGrams<Entry extends { readonly amount: number; readonly unit: string }>(
  entry: Entry,
  settings: Settings,
): Entry {
  return entry.unit === "g" ? { ...entry, amount: gramsTyped(entry.amount, unitsOf(settings)) } : entry;
}
