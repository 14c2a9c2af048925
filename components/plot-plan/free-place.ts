/** A piece of the drawing that is taken. */
export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

const letter = 8;
const high = 13;

/**
 * The place for a number of so many figures beside a mark that covers nothing else: first to its right, then round it, then farther out.
 * Where all is taken the first that lies within the drawing.
 */
export function freePlace(
  mark: { readonly x: number; readonly y: number },
  from: number,
  figures: number,
  taken: readonly Box[],
  side: number,
): { readonly at: { readonly x: number; readonly y: number }; readonly box: Box } {
  const wide = figures * letter;
  const places = [0, 9, 18, 30].flatMap((more) =>
    [0, 1, -1, 2, -2, 3, -3, 4].map((eighth) => {
      const angle = (eighth * Math.PI) / 4;
      const far = from + more + (wide / 2 - letter / 2) * Math.abs(Math.cos(angle));
      const at = { x: mark.x + far * Math.cos(angle), y: mark.y - far * Math.sin(angle) };
      return { at, box: boxOf(at, wide) };
    }),
  );
  const inside = places.filter(({ box }) => box.left >= 0 && box.top >= 0 && box.right <= side && box.bottom <= side);
  const free = inside.find(({ box }) => taken.every((other) => !overlap(box, other)));
  return free ?? inside[0] ?? (places[0] as (typeof places)[number]);
}

function boxOf({ x, y }: { readonly x: number; readonly y: number }, wide: number): Box {
  return { left: x - wide / 2 - 1, right: x + wide / 2 + 1, top: y - high / 2, bottom: y + high / 2 };
}

/** Whether two boxes share a place; an edge in common is none. */
export function overlap(one: Box, other: Box): boolean {
  return one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom;
}
