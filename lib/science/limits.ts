/**
 * What a single number must be, and the refusal where it is not. Every calculation asks here, so that a limit and its
 * sentence stand in one place. A key that was left out (undefined) passes: whether it may be left out is a matter of shape.
 */
import { type Path, type Refusal, refusal } from "@/lib/science/outcome";

export type Fault = Refusal | undefined;

/** The faults that were found, without the gaps. */
export function faultsAmong(...found: readonly Fault[]): Refusal[] {
  return found.filter((fault): fault is Refusal => fault !== undefined);
}

/** A share or a probability: 0 to 1. */
export function shareFault(path: Path, given: number | undefined): Fault {
  if (given === undefined || (given >= 0 && given <= 1)) return undefined;
  return outOfRange(path, given, "a share from 0 to 1 is needed (0.25 for a quarter)");
}

/** A share or a probability above 0, at most 1. */
export function shareAboveZeroFault(path: Path, given: number | undefined): Fault {
  if (given === undefined || (given > 0 && given <= 1)) return undefined;
  return outOfRange(path, given, "a share above 0 and at most 1 is needed (0.25 for a quarter)");
}

/** A confidence or another probability that can be neither 0 nor 1. */
export function insideFault(path: Path, given: number | undefined): Fault {
  if (given === undefined || (given > 0 && given < 1)) return undefined;
  return outOfRange(path, given, "a number between 0 and 1, neither of them, is needed (0.95 for 95 %)");
}

/** A whole number, `least` or more. */
export function countFault(path: Path, given: number | undefined, least = 0): Fault {
  if (given === undefined || (Number.isSafeInteger(given) && given >= least)) return undefined;
  return outOfRange(path, given, `a whole number, ${least} or more, is needed`);
}

/** Any finite number. */
export function finiteFault(path: Path, given: number | undefined): Fault {
  if (given === undefined || Number.isFinite(given)) return undefined;
  return outOfRange(path, given, "a number is needed");
}

/** A finite number, 0 or more. */
export function notNegativeFault(path: Path, given: number | undefined): Fault {
  if (given === undefined || (Number.isFinite(given) && given >= 0)) return undefined;
  return outOfRange(path, given, "a number of 0 or more is needed");
}

/** A finite number above 0. */
export function positiveFault(path: Path, given: number | undefined): Fault {
  if (given === undefined || (Number.isFinite(given) && given > 0)) return undefined;
  return outOfRange(path, given, "a number above 0 is needed");
}

function outOfRange(path: Path, given: number, needed: string): Refusal {
  const field = [...path].reverse().find((step) => typeof step === "string") ?? "this number";
  return refusal("out-of-range", path, given, `cannot stand for ${field}`, needed);
}
