"use server";

import { gramsTyped } from "@/lib/display/units";
import { blendLots } from "@/lib/registry/lots/blend-lots";
import { splitLot } from "@/lib/registry/lots/split-lot";
import { blendSchema, splitSchema } from "@/lib/schemas/lots/blend-lots";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { type Outcome, refused } from "@/lib/science/outcome";
import { current } from "../../_session/current";
import { answerOf, type FormAnswer, textsOf, tickedOf } from "../_form/form-answer";
import { unitsOf } from "../_words/units-of";

/** Mixes the lots that are ticked: `in.ID`, `amount.ID`, `unit.ID`, `living.ID` of each. */
export async function mixLots(_before: FormAnswer, form: FormData): Promise<FormAnswer> {
  const { db, actor, settings } = await current("desk");
  const typed = textsOf(form);
  const ids = tickedOf(typed, "in.");
  const parts = ids.map((id) => ({
    lot: id,
    amount: typed[`amount.${id}`],
    unit: typed[`unit.${id}`],
    living: typed[`living.${id}`],
  }));
  const input = parseForm(blendSchema(settings.hemisphere), { ...typed, parts });
  const inGrams = (amount: number, unit: string) => (unit === "g" ? gramsTyped(amount, unitsOf(settings)) : amount);
  const outcome = input.ok
    ? await blendLots(db, actor, {
        ...input.value,
        parts: input.value.parts.map((part) => ({ ...part, amount: inGrams(part.amount, part.unit) })),
      })
    : input;
  return answerOf(typed, atFields(outcome, ids), ({ value }) => `/lots/${value.lotId}#lineage`);
}

/** Parts a lot. */
export async function partLot(lotId: string, _before: FormAnswer, form: FormData): Promise<FormAnswer> {
  const { db, actor, settings } = await current("desk");
  const typed = textsOf(form);
  const input = parseForm(splitSchema(settings.hemisphere), typed);
  if (!input.ok) return answerOf(typed, input, () => "");
  const { amount, unit } = input.value;
  const stored = unit === "g" ? gramsTyped(amount, unitsOf(settings)) : amount;
  const outcome = await splitLot(db, actor, lotId, { ...input.value, amount: stored });
  return answerOf(typed, outcome, ({ value }) => `/lots/${value.lotId}`);
}

/** `parts, 1, amount` is the field `amount.ID` of the second lot that was ticked. */
function atFields<T>(outcome: Outcome<T>, ids: readonly string[]): Outcome<T> {
  if (outcome.ok) return outcome;
  return refused(
    ...outcome.refusals.map((each) => {
      const [first, place, field] = each.path;
      if (first !== "parts") return each;
      if (typeof place !== "number") return { ...each, path: [] };
      return { ...each, path: [`${field === "lot" ? "in" : field}.${ids[place]}`] };
    }),
  );
}
