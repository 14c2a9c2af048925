import { existsSync, readFileSync } from "node:fs";
import path from "node:path";
import { expect } from "vitest";
import type { Outcome, Refusal } from "@/lib/science/outcome";

export interface ReferenceCase<Input> {
  readonly name?: string;
  readonly input: Input;
  readonly expected: unknown;
  readonly source?: string;
  readonly tolerance?: number;
}

/**
 * Reference values of tests/reference/NAME.json: where they come from stands in the file. `npm run bench -- references` has many more made
 * and names their folder in KINROW_REFERENCES.
 */
export function referenceCases<Input>(name: string): readonly ReferenceCase<Input>[] {
  const many = path.join(process.env.KINROW_REFERENCES ?? "", `${name}.json`);
  const file =
    process.env.KINROW_REFERENCES && existsSync(many) ? many : new URL(`../reference/${name}.json`, import.meta.url);
  return (JSON.parse(readFileSync(file, "utf8")) as { cases: ReferenceCase<Input>[] }).cases;
}

export interface Tolerance {
  readonly relative: number;
  readonly absolute: number;
}

/** The contract's precision of closed forms. */
export const CLOSED_FORM: Tolerance = { relative: 1e-9, absolute: 1e-12 };

/** Every key of `expected` stands in `actual` with the same value, numbers within tolerance. */
export function expectAgreement(actual: unknown, expected: unknown, tolerance = CLOSED_FORM, at = "result"): void {
  if (typeof expected === "number" && typeof actual === "number") {
    const allowed = Math.max(tolerance.absolute, tolerance.relative * Math.abs(expected));
    if (Math.abs(actual - expected) > allowed) expect.fail(`${at}: ${actual} is not ${expected} (within ${allowed})`);
  } else if (expected !== null && typeof expected === "object") {
    for (const [key, value] of Object.entries(expected)) {
      expectAgreement((actual as Record<string, unknown> | null)?.[key], value, tolerance, `${at}.${key}`);
    }
    if (Array.isArray(expected)) expect(actual, at).toHaveLength(expected.length);
  } else expect(actual, at).toBe(expected);
}

export function answered<T>(outcome: Outcome<T>): T {
  if (!outcome.ok) return expect.fail(`refused: ${outcome.refusals.map((refusal) => refusal.sentence).join("; ")}`);
  return outcome.value;
}

export function refusalsOf(outcome: Outcome<unknown>): readonly Refusal[] {
  return outcome.ok ? expect.fail("was not refused") : outcome.refusals;
}

export function pathsOf(outcome: Outcome<unknown>): Refusal["path"][] {
  return refusalsOf(outcome).map((refusal) => refusal.path);
}
