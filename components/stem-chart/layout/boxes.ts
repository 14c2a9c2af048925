export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

const cell = 64;
const cellsDown = 1_000_003;

/** Boxes by the squares that they touch, so that what stands near a place is found without asking all. */
export class Boxes {
  readonly #cells = new Map<number, Box[]>();

  add(box: Box): void {
    for (const key of keysOf(box)) {
      const held = this.#cells.get(key);
      if (held) held.push(box);
      else this.#cells.set(key, [box]);
    }
  }

  /** Whether a box lies over one of these, other than `own`. */
  hit(box: Box, own?: Box): boolean {
    for (const key of keysOf(box)) {
      for (const other of this.#cells.get(key) ?? []) if (other !== own && overlap(box, other)) return true;
    }
    return false;
  }
}

export function overlap(one: Box, other: Box): boolean {
  return one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom;
}

function keysOf({ left, right, top, bottom }: Box): readonly number[] {
  const keys: number[] = [];
  for (let across = Math.floor(left / cell); across <= Math.floor(right / cell); across += 1)
    for (let down = Math.floor(top / cell); down <= Math.floor(bottom / cell); down += 1)
      keys.push(across * cellsDown + down);
  return keys;
}
