/**
 * What a single number must be, and the refusal where it is not. Every calculation asks here, so that a limit and its
 * sentence stand in one place. A key that was left out (undefined) passes: whether it may be left out is a matter of shape.
 */
import { type Path, type Refusal, refusal } from "@/lib/science/outcome";

export type Fault = Refusal | undefined;

/** The last step of a place; joined to the steps above it only where there is a fault to name. */
type Key = string | number;

/** The faults that were found, without the gaps. */
export function faultsAmong(...found: readonly Fault[]): Refusal[] {
  return faultsIn(found);
}

/** The same of a list, which may be long. */
export function faultsIn(found: readonly Fault[]): Refusal[] {
  return found.filter((fault): fault is Refusal => fault !== undefined);
}

/** A share or a probability: 0 to 1. */
export function shareFault(at: Path, key: Key, given: number | undefined): Fault {
  if (given === undefined || (given >= 0 && given <= 1)) return undefined;
  return outOfRange(at, key, given, "a share from 0 to 1 is needed (0.25 for a quarter)");
}

/** A share or a probability above 0, at most 1. */
export function shareAboveZeroFault(at: Path, key: Key, given: number | undefined): Fault {
  if (given === undefined || (given > 0 && given <= 1)) return undefined;
  return outOfRange(at, key, given, "a share above 0 and at most 1 is needed (0.25 for a quarter)");
}

/** A confidence or another probability that can be neither 0 nor 1. */
export function insideFault(at: Path, key: Key, given: number | undefined): Fault {
  if (given === undefined || (given > 0 && given < 1)) return undefined;
  return outOfRange(at, key, given, "a number between 0 and 1, neither of them, is needed (0.95 for 95 %)");
}

/** A whole number, `least` or more. */
export function countFault(at: Path, key: Key, given: number | undefined, least = 0): Fault {
  if (given === undefined || (Number.isSafeInteger(given) && given >= least)) return undefined;
  return outOfRange(at, key, given, `a whole number, ${least} or more, is needed`);
}

/** Any finite number. */
export function finiteFault(at: Path, key: Key, given: number | undefined): Fault {
  if (given === undefined || Number.isFinite(given)) return undefined;
  return outOfRange(at, key, given, "a number is needed");
}

/** A finite number, 0 or more. */
export function notNegativeFault(at: Path, key: Key, given: number | undefined): Fault {
  if (given === undefined || (Number.isFinite(given) && given >= 0)) return undefined;
  return outOfRange(at, key, given, "a number of 0 or more is needed");
}

/** A finite number above 0. */
export function positiveFault(at: Path, key: Key, given: number | undefined): Fault {
  if (given === undefined || (Number.isFinite(given) && given > 0)) return undefined;
  return outOfRange(at, key, given, "a number above 0 is needed");
}

function outOfRange(at: Path, key: Key, given: number, needed: string): Refusal {
  const path = [...at, key];
  const field = [...path].reverse().find((step) => typeof step === "string") ?? "this number";
  return refusal("out-of-range", path, given, `cannot stand for ${field}`, needed);
}
