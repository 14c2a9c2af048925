/** A bell is followed down to e^−40 of its top, unless told otherwise: what lies beyond adds less than 1e-17. */
const USUAL_DEPTH = 40;

/**
 * The bounds within which a bell, given by its logarithm, holds all that counts. Takes the place of its top, a first stride
 * (about its width) and the outermost bounds; the logarithm falls on both sides of the top.
 */
export function bellBounds(
  logarithm: (x: number) => number,
  top: number,
  stride: number,
  outermost: readonly [number, number],
  depth = USUAL_DEPTH,
): readonly [number, number] {
  const floor = logarithm(top) - depth;
  return [foot(logarithm, top, -stride, outermost[0], floor), foot(logarithm, top, stride, outermost[1], floor)];
}

function foot(logarithm: (x: number) => number, top: number, stride: number, outermost: number, floor: number): number {
  const beyond = (x: number) => (stride < 0 ? x <= outermost : x >= outermost);
  let inside = top;
  let outside = top;
  let reach = stride;
  do {
    inside = outside;
    outside = top + reach;
    reach *= 2;
    if (beyond(outside)) {
      if (!(logarithm(outermost) < floor)) return outermost;
      outside = outermost;
      break;
    }
  } while (logarithm(outside) > floor);
  for (let round = 0; round < 12; round++) {
    const middle = (inside + outside) / 2;
    if (logarithm(middle) > floor) inside = middle;
    else outside = middle;
  }
  return outside;
}
