import { type Bearing, directionOf } from "./bearings";

/** The centre of a square that stands off another. */
export interface Centre {
  readonly east: number;
  readonly north: number;
}

/**
 * Where the centre of a square of side `other` lies, whose edge is `gap` metres from the edge of a square of side `own` about the origin
 * (both along the axes), on a bearing from centre to centre. Found by halving; to 1e-9 m.
 */
export function centreAtGap(own: number, other: number, gap: number, bearing: Bearing): Centre {
  const { east, north } = directionOf(bearing);
  const half = (own + other) / 2;
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
  return { east: far * east, north: far * north };
}
