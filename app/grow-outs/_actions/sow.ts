"use server";

import { gramsTyped } from "@/lib/display/units";
import { sowGrowOut } from "@/lib/registry/grow-outs/sow-grow-out";
import { sowGrowOutSchema } from "@/lib/schemas/grow-outs/sow-grow-out";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { current } from "../../_session/current";
import { answerOf, type FormAnswer, textsOf } from "../../lots/_form/form-answer";
import { unitsOf } from "../../lots/_words/units-of";
import { partsOfTexts } from "../_form/typed-parts";

/** Sows a grow-out: the jars' ledgers and its own day in one. */
export async function sow(growOutId: string, _before: FormAnswer, form: FormData): Promise<FormAnswer> {
  const { db, actor, settings, today } = await current("record");
  const typed = textsOf(form);
  const input = parseForm(sowGrowOutSchema(settings.hemisphere), { ...typed, parts: partsOfTexts(typed) });
  if (!input.ok) return answerOf(typed, input, () => "");
  const units = unitsOf(settings);
  // What was typed in the steward's unit of weight is stored in grams.
  const parts = input.value.parts.map((part) =>
    part.unit === "g" && part.amount !== null ? { ...part, amount: gramsTyped(part.amount, units) } : part,
  );
  const outcome = await sowGrowOut(db, actor, growOutId, { ...input.value, parts }, { settings, today });
  return answerOf(typed, outcome, () => `/grow-outs/${growOutId}`);
}
