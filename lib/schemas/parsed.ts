import type { z } from "zod";
import { accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";

/**
 * Reads what was sent by its shape. A shape's message says what is wrong and, after "; ", what would be right; each becomes a
 * refusal at its field.
 */
export function parsed<S extends z.ZodType>(shape: S, given: unknown): Outcome<z.output<S>> {
  const result = shape.safeParse(given, { reportInput: true });
  if (result.success) return accepted(result.data);
  return refused(...result.error.issues.map((issue) => refusalOfIssue(issue, given)));
}

function refusalOfIssue(issue: z.core.$ZodIssue, whole: unknown): Refusal {
  const path = issue.path.filter((step): step is string | number => typeof step !== "symbol");
  if (issue.code === "unrecognized_keys") {
    const [key = ""] = issue.keys;
    return refusal("unknown-field", [...path, key], key, "is no field here", "leave it out");
  }
  const [wrong = "", ...needed] = issue.message.split("; ");
  const given = valueAt(whole, path) ?? "";
  return refusal(issue.code, path, given, wrong, needed.join("; ") || "write it as the field's hint says");
}

function valueAt(whole: unknown, path: readonly (string | number)[]): unknown {
  return path.reduce<unknown>(
    (value, step) =>
      typeof value === "object" && value !== null ? (value as Record<string, unknown>)[step] : undefined,
    whole,
  );
}
