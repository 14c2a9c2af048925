import type { Grade } from "@/components/doubt/grade";
import type { Bearing } from "@/lib/science/isolation/bearings";

/** How a neighbour weighs on the plan: what the rule says of it, in a word for the eye. */
export type PlanWeight = "too-close" | "marginal" | "ok" | "no-matter" | "not-assessed";

/** A neighbour source as the plan draws it; null is not known. */
export interface PlanNeighbour {
  readonly id: string;
  /** its number on the plan and in the table */
  readonly number: number;
  readonly distanceMetres: number | null;
  readonly bearing: Bearing | null;
  readonly sizeM2: number | null;
  readonly weight: PlanWeight;
  /** how its size and place are known */
  readonly grade: Grade;
}

export interface PlanRing {
  readonly metres: number;
  readonly name: string;
}

/** A plot among its neighbours, in metres. */
export interface Plan {
  /** null: its area is not known */
  readonly plotM2: number | null;
  readonly rings: readonly PlanRing[];
  readonly neighbours: readonly PlanNeighbour[];
}

const steps = [1, 1.5, 2, 3, 4, 5, 6, 8, 10];

/** The next round length up: 12 gives 15, 140 gives 150. */
export function roundUp(metres: number): number {
  const tens = 10 ** Math.floor(Math.log10(metres));
  return tens * (steps.find((step) => step * tens >= metres * (1 - 1e-9)) ?? 10);
}

/**
 * How far out each drawing reaches, in metres from the edge of the plot: first a little beyond the outer ring and the farthest neighbour;
 * where something stands so near that it would be lost in it, a second one of what is close by.
 */
export function planReaches({ plotM2, rings, neighbours }: Plan): number[] {
  const side = Math.sqrt(plotM2 ?? 0);
  const far = neighbours.flatMap(({ distanceMetres, bearing, sizeM2 }) =>
    distanceMetres === null || bearing === null ? [] : [distanceMetres + Math.sqrt(sizeM2 ?? 0)],
  );
  const outermost = Math.max(10, side / 2, ...rings.map((ring) => ring.metres), ...far);
  const whole = outermost * 1.04;
  const near = neighbours.flatMap(({ distanceMetres, bearing }) =>
    distanceMetres !== null && bearing !== null && distanceMetres < whole / 7 ? [distanceMetres] : [],
  );
  if (near.length === 0) return [whole];
  return [whole, roundUp(Math.max(5, side, ...near) * 1.35)];
}
