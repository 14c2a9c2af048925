import type { z } from "zod";
import { accepted, type Outcome, type Path, type Refusal, refusal, refused } from "@/lib/science/outcome";

/**
 * Reads something from outside by its shape. A shape's message says what is wrong and, after "; ", what would be right; each becomes a
 * refusal at its field.
 */
export function parsed<S extends z.ZodType>(shape: S, given: unknown): Outcome<z.output<S>> {
  const read = shape.safeParse(given);
  return read.success ? accepted(read.data) : refused(...read.error.issues.map((issue) => asRefusal(issue, given)));
}

function asRefusal(issue: z.core.$ZodIssue, whole: unknown): Refusal {
  const path = issue.path.filter((step): step is string | number => typeof step !== "symbol");
  const [wrong = "", ...needed] = issue.message.split("; ");
  return refusal(issue.code, path, valueAt(whole, path) ?? "", wrong, needed.join("; ") || "look at it again");
}

function valueAt(whole: unknown, path: Path): unknown {
  return path.reduce<unknown>(
    (value, step) =>
      typeof value === "object" && value !== null ? (value as Record<string | number, unknown>)[step] : undefined,
    whole,
  );
}
