"use server";

import { revalidatePath } from "next/cache";
import { addPlants } from "@/lib/registry/plants/add-plants";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { addPlantsSchema } from "@/lib/schemas/plants/add-plants";
import { current } from "../../../../_session/current";
import { answerOf, type FormAnswer, textsOf } from "../../../../lots/_form/form-answer";

/** Adds plants to a grow-out, and leads back to its grid. */
export async function addThesePlants(growOutId: string, _before: FormAnswer, form: FormData): Promise<FormAnswer> {
  const { db, actor, settings } = await current("record-in-field");
  const typed = textsOf(form);
  const input = parseForm(addPlantsSchema(settings.hemisphere), typed);
  const outcome = input.ok ? await addPlants(db, actor, growOutId, input.value) : input;
  if (outcome.ok) revalidatePath("/", "layout");
  return answerOf(typed, outcome, () => `/grow-outs/${growOutId}/plants`);
}
