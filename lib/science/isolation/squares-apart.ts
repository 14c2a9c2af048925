import { type Bearing, directionOf } from "./bearings";

/** The centre of a square that stands off another. */
export interface Centre {
  readonly east: number;
  readonly north: number;
}

/**
 * How far along a direction from the origin the middle of a square must lie, so that its edge is `gap` metres from the edge of a square
 * about the origin; `half` is half of both sides together, both squares lie along the axes. Found by halving; to 1e-10 of it.
 */
export function farAtGap(half: number, gap: number, { east, north }: Centre): number {
  const gapAt = (far: number) => {
    const across = Math.max(0, Math.abs(far * east) - half);
    const up = Math.max(0, Math.abs(far * north) - half);
    return Math.hypot(across, up);
  };
  let [near, far] = [0, gap + 2 * half + 1];
  while (far - near > 1e-10 * Math.max(1, far)) {
    const middle = (near + far) / 2;
    if (gapAt(middle) < gap || gapAt(middle) === 0) near = middle;
    else far = middle;
  }
  return far;
}

/** Where the centre of a square of side `other` lies that stands `gap` metres off a square of side `own`, on a bearing from centre to centre. */
export function centreAtGap(own: number, other: number, gap: number, bearing: Bearing): Centre {
  const direction = directionOf(bearing);
  const far = farAtGap((own + other) / 2, gap, direction);
  return { east: far * direction.east, north: far * direction.north };
}
