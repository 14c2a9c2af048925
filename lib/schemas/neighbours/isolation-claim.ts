import { z } from "zod";
import { isolationGrades } from "@/lib/science/isolation/isolation-grade";
import { neededField, oneOf, words } from "../lots/form-fields";

const before = "lot:";

/** The name of the box that is ticked for a lot. */
export function boxOfLot(lotId: string): string {
  return `${before}${lotId}`;
}

/** What is claimed of the isolation of lots, and why. The lots are those whose boxes were ticked. */
export const isolationClaimSchema = z
  .looseObject({
    grade: neededField(oneOf(isolationGrades), "choose the grade"),
    reasons: neededField(words, "say why in a sentence: it stays with the lots"),
  })
  .transform(({ grade, reasons, ...boxes }) => ({
    grade,
    reasons,
    lotIds: Object.entries(boxes).flatMap(([name, value]) =>
      name.startsWith(before) && value === "yes" ? [name.slice(before.length)] : [],
    ),
  }));

export type IsolationClaimInput = z.output<typeof isolationClaimSchema>;
