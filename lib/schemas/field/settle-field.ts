import { z } from "zod";
import { isCivilDay } from "@/lib/science/dates/civil-day";
import { accepted, refusal, refused } from "@/lib/science/outcome";
import { type FieldReader, neededField, oneOf, openField, words } from "../lots/form-fields";

/** What becomes of a record from the field that a person has looked at. */
export const waysOfSettling = ["keep", "day", "set aside"] as const;

const civilDay: FieldReader<string> = (text) =>
  isCivilDay(text.trim())
    ? accepted(text.trim())
    : refused(refusal("not-a-day", [], text, "is no day", "write it as 2026-07-04"));

/** How a record from the field is settled, and why. */
export const settleFieldSchema = z
  .object({
    how: neededField(oneOf(waysOfSettling), "choose what becomes of it"),
    on: openField(civilDay),
    why: neededField(words, "say in a few words how you know"),
  })
  .superRefine(({ how, on }, context) => {
    if (how !== "day" || on !== null) return;
    const params = { refusal: refusal("missing", ["on"], "", "stands here", "write the day in the field") };
    context.addIssue({ code: "custom", path: ["on"], message: params.refusal.sentence, params });
  });
export type SettleFieldInput = z.output<typeof settleFieldSchema>;

/** Whether two records are one plant, and how it is known. */
export const samePlantSchema = z.object({
  same: neededField(oneOf(["one", "two"]), "say whether they are one plant or two"),
  why: neededField(words, "say in a few words how you know"),
});
