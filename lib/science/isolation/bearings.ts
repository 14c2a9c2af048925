/** The eight points at which a neighbour may lie, seen from the plot, clockwise from north. */
export const bearings = ["N", "NE", "E", "SE", "S", "SW", "W", "NW"] as const;
export type Bearing = (typeof bearings)[number];

/** The direction of a bearing: east and north of it, together of length 1. */
export function directionOf(bearing: Bearing): { readonly east: number; readonly north: number } {
  const angle = (bearings.indexOf(bearing) * Math.PI) / 4;
  return { east: Math.sin(angle), north: Math.cos(angle) };
}
