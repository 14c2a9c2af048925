import type { z } from "zod";
import { accepted, type Outcome, type Path, type Refusal, refusal, refused } from "@/lib/science/outcome";

/**
 * Reads a JSON value by a shape. Each fault becomes a refusal with its place: an unknown key its own, a missing one the place
 * that it would have, what is no object at all none.
 */
export function readShape<T>(shape: z.ZodType<T>, input: unknown): Outcome<T> {
  const read = shape.safeParse(input);
  if (read.success) return accepted(read.data);
  const faults = read.error.issues.flatMap((issue) => refusalsFor(issue, [], input));
  return refused(...faults);
}

type Issue = z.core.$ZodIssue;

const NAMES: Readonly<Record<string, string>> = {
  number: "a number",
  int: "a whole number",
  string: "a text in quotes",
  boolean: "true or false",
  array: "a list in [ ]",
  tuple: "a list in [ ]",
  object: "an object in { }",
  record: "an object in { }",
};

function refusalsFor(issue: Issue, above: Path, input: unknown): Refusal[] {
  const path = [...above, ...issue.path].map((step) => (typeof step === "symbol" ? String(step) : step));
  const given = valueAt(input, path);
  const field = path.length === 0 ? "the input" : String(path.at(-1));
  if (issue.code === "unrecognized_keys") {
    return issue.keys.map((key) => {
      const at = [...path, key];
      return refusal("unknown-key", at, key, "is no key that is known here", "leave it out, or mend its spelling");
    });
  }
  if (issue.code === "invalid_union") return unionRefusals(issue, path, input);
  if (issue.code === "invalid_value") return [wrongValue(path, given, field, issue.values)];
  if (issue.code === "invalid_type") {
    if (path.length === 0) {
      return [refusal("no-object", path, given, "is no JSON object", "write one object in { } on each line")];
    }
    if (issue.expected === "int" && typeof given === "number") {
      return [refusal("not-whole", path, given, `cannot stand for ${field}`, "a whole number is needed")];
    }
    const wrong = given === undefined || given === null ? `stands for ${field}` : `cannot stand for ${field}`;
    return [refusal("wrong-type", path, given, wrong, `${named(issue.expected)} is needed`)];
  }
  return [refusal("wrong-size", path, given, `cannot stand for ${field}`, sizeNeeded(issue))];
}

function unionRefusals(issue: Extract<Issue, { code: "invalid_union" }>, path: Path, input: unknown): Refusal[] {
  const given = valueAt(input, path);
  const field = String(path.at(-1) ?? "the input");
  const meant = meantBranch(issue.errors);
  if (meant) return meant.flatMap((inner) => refusalsFor(inner, path, input));
  const options = "options" in issue && Array.isArray(issue.options) ? issue.options : undefined;
  if (options) return [wrongValue(path, given, field, options)];
  const choices = issue.errors.flat().map((inner) => {
    if (inner.code === "invalid_value") return inner.values.map((value) => JSON.stringify(value)).join(" or ");
    return inner.code === "invalid_type" ? named(inner.expected) : "something else";
  });
  return [refusal("wrong-type", path, given, `cannot stand for ${field}`, `needed is ${choices.join(", or ")}`)];
}

/** The way that the writer most likely meant: the right kind of value, and the fewest faults within it. */
function meantBranch(branches: readonly (readonly Issue[])[]): readonly Issue[] | undefined {
  const rightKind = branches.filter((issues) =>
    issues.every((issue) => issue.path.length > 0 || (issue.code !== "invalid_type" && issue.code !== "invalid_value")),
  );
  const faults = (issues: readonly Issue[]) =>
    issues.reduce((sum, issue) => sum + (issue.code === "unrecognized_keys" ? issue.keys.length : 1), 0);
  return [...rightKind].sort((a, b) => faults(a) - faults(b))[0];
}

function wrongValue(path: Path, given: unknown, field: string, values: readonly unknown[]): Refusal {
  const choices = values.map((value) => JSON.stringify(value)).join(", ");
  return refusal("unknown-choice", path, given, `cannot stand for ${field}`, `choose one of ${choices}`);
}

function sizeNeeded(issue: Issue): string {
  if (issue.code === "too_small") {
    return issue.origin === "string" ? "it may not be empty" : `at least ${issue.minimum} are needed`;
  }
  if (issue.code === "too_big") {
    return issue.origin === "array" ? `at most ${issue.maximum} are allowed` : `at most ${issue.maximum}`;
  }
  return issue.message;
}

function named(expected: string): string {
  return NAMES[expected] ?? expected;
}

function valueAt(input: unknown, path: Path): unknown {
  let value: unknown = input;
  for (const step of path) {
    if (value === null || typeof value !== "object") return undefined;
    value = (value as Record<string | number, unknown>)[step];
  }
  return value;
}
