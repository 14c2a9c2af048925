/*
 * Taps that no finger meant. A wet screen or a drop on it makes two contacts at once, at places far apart; a wet glove makes one tap land twice
 * within a fifth of a second. A thumb that means two taps takes longer for them, and does not reach two places at once.
 */

export interface Tap {
  /** milliseconds, by a clock that only goes forward */
  readonly at: number;
  readonly x: number;
  readonly y: number;
  /** false for a further finger on the screen */
  readonly first: boolean;
}

/** A tap on nearly the same place within so many milliseconds is the same tap. */
export const sameTapWithin = 250;
/** On what is meant to be tapped fast, up and down by one, it is so only within these. */
export const sameStepWithin = 120;
/** A tap elsewhere within so many milliseconds is water. */
export const waterWithin = 80;
/** Elsewhere: so many pixels away, about the width of a thumb. */
const elsewhere = 60;

/** True where a tap is meant; `last` is the last one that was, `step` says that the place is meant to be tapped fast. */
export function isMeant(tap: Tap, last: Tap | null, step: boolean): boolean {
  if (!tap.first) return false;
  if (last === null) return true;
  const passed = tap.at - last.at;
  if (Math.hypot(tap.x - last.x, tap.y - last.y) > elsewhere) return passed >= waterWithin;
  return passed >= (step ? sameStepWithin : sameTapWithin);
}
