import { z } from "zod";
import { type Outcome, refusal, refused } from "@/lib/science/outcome";
import { count, decimal, type FieldReader, neededField } from "../lots/form-fields";
import type { Settings } from "../settings";
import { neededChoice } from "./fields";

/** A percentage between 0 and 100, neither of them, as a share. */
const line: FieldReader<number> = (text) => {
  const read = decimal({ above: 0 })(text);
  if (!read.ok) return read;
  if (read.value >= 100)
    return refused(refusal("too-large", [], read.value, "is too large", "write a percentage below 100"));
  return { ok: true, value: Number((read.value / 100).toFixed(6)) };
};

const years: FieldReader<number> = (text): Outcome<number> => {
  const read = count(text);
  if (read.ok && read.value > 50)
    return refused(refusal("too-large", [], read.value, "is too large", "write at most 50 years"));
  return read;
};

/** The settings as a form asks for them: the lines as percentages, the urgent one below the one for planning. */
export const SettingsFormSchema = z
  .strictObject({
    renewalPlan: neededField(line, "write a percentage, such as 70"),
    renewalUrgent: neededField(line, "write a percentage, such as 50"),
    confirmedYears: neededField(years, "write a number of years, such as 3"),
    units: neededChoice(["metric", "imperial"]),
    hemisphere: neededChoice(["north", "south"]),
  })
  .superRefine(({ renewalPlan, renewalUrgent }, context) => {
    if (renewalUrgent < renewalPlan) return;
    const hundred = (share: number) => Number((share * 100).toFixed(4));
    const crossed = refusal(
      "lines-crossed",
      ["renewalUrgent"],
      hundred(renewalUrgent),
      "is not below the line for planning",
      `write a percentage below ${hundred(renewalPlan)}`,
    );
    context.addIssue({
      code: "custom",
      path: ["renewalUrgent"],
      message: crossed.sentence,
      params: { refusal: crossed },
    });
  }) satisfies z.ZodType<Settings>;
