import { directionOf } from "@/lib/science/isolation/bearings";
import { centreAtGap, farAtGap } from "@/lib/science/isolation/squares-apart";
import { type Box, freePlace } from "./free-place";
import { type Plan, type PlanNeighbour, roundUp } from "./plan";

/** The side of the drawing, in its own units: about a pixel each on a narrow phone. */
export const planSide = 340;
const middle = planSide / 2;
const rim = 152;
/** Smaller than this nothing can be seen: it is drawn larger, and said so. */
const leastSide = 7;
/** Bearings lie at eighths of a turn: a ring's name stands between two of them. */
const nameAngle = Math.PI / 8;

export interface Spot {
  readonly x: number;
  readonly y: number;
}

export interface DrawnRing extends Spot {
  readonly name: string;
  /** distance of its straight sides from the middle, and the radius of its corners */
  readonly half: number;
  readonly radius: number;
}

export interface DrawnNeighbour {
  readonly neighbour: PlanNeighbour;
  readonly at: Spot;
  readonly side: number;
  /** false: drawn larger than it is, or its size is not known */
  readonly toScale: boolean;
  readonly number: Spot;
}

export interface PlanLayout {
  readonly unitsPerMetre: number;
  readonly plot: { readonly side: number; readonly toScale: boolean; readonly known: boolean };
  readonly rings: readonly DrawnRing[];
  readonly placed: readonly DrawnNeighbour[];
  /** the side is known, the distance is not: a line outwards */
  readonly rays: readonly {
    readonly neighbour: PlanNeighbour;
    readonly from: Spot;
    readonly to: Spot;
    readonly number: Spot;
  }[];
  /** they lie farther out than this drawing reaches */
  readonly beyond: readonly PlanNeighbour[];
  readonly bar: { readonly metres: number; readonly length: number };
}

/**
 * Lays a plan out to scale, north up, out to `reach` metres from the plot's edge: squares of the areas that are known, each at its gap from
 * edge to edge, rings at the distances of the rule. What has no bearing has no place here.
 */
export function planLayout(plan: Plan, reach: number): PlanLayout {
  const plotSide = Math.sqrt(plan.plotM2 ?? 0);
  const scale = rim / (reach + plotSide / 2);
  const drawnPlot = Math.max(leastSide, plotSide * scale);
  const taken: Box[] = [around({ x: middle, y: middle }, drawnPlot)];
  const rings = plan.rings
    .filter((ring) => ring.metres <= reach * 1.001)
    .map((ring): DrawnRing => {
      const half = (plotSide / 2 + ring.metres) * scale;
      const far =
        farAtGap(plotSide / 2, ring.metres, { east: Math.sin(nameAngle), north: Math.cos(nameAngle) }) * scale;
      const at = { x: middle + far * Math.sin(nameAngle), y: middle - far * Math.cos(nameAngle) };
      taken.push({ left: at.x - 4, top: at.y - 8, right: at.x + 7 * ring.name.length, bottom: at.y + 8 });
      return { name: ring.name, half, radius: ring.metres * scale, ...at };
    });
  const within = plan.neighbours.filter(({ distanceMetres, bearing }) => distanceMetres !== null && bearing !== null);
  const near = within.filter(({ distanceMetres }) => (distanceMetres ?? 0) <= reach * 1.001);
  const squares = near.map((neighbour) => {
    const side = Math.sqrt(neighbour.sizeM2 ?? 0);
    const { east, north } = centreAtGap(plotSide, side, neighbour.distanceMetres ?? 0, neighbour.bearing ?? "N");
    const drawn = Math.max(leastSide, side * scale);
    const toScale = neighbour.sizeM2 !== null && side * scale >= leastSide;
    return { neighbour, at: { x: middle + east * scale, y: middle - north * scale }, side: drawn, toScale };
  });
  taken.push(...squares.map(({ at, side }) => around(at, side)));
  const placed = squares.map((square): DrawnNeighbour => {
    const number = freePlace(square.at, square.side / 2 + 9, String(square.neighbour.number).length, taken, planSide);
    taken.push(number.box);
    return { ...square, number: number.at };
  });
  const rays = plan.neighbours
    .filter(({ distanceMetres, bearing }) => distanceMetres === null && bearing !== null)
    .map((neighbour) => {
      const { east, north } = directionOf(neighbour.bearing ?? "N");
      const out = (far: number) => ({ x: middle + far * east, y: middle - far * north });
      const number = freePlace(out(rim + 2), 9, String(neighbour.number).length, taken, planSide);
      taken.push(number.box);
      return { neighbour, from: out(drawnPlot / 2 + 6), to: out(rim), number: number.at };
    });
  return {
    unitsPerMetre: scale,
    plot: { side: drawnPlot, toScale: plotSide * scale >= leastSide, known: plan.plotM2 !== null },
    rings,
    placed,
    rays,
    beyond: within.filter((neighbour) => !near.includes(neighbour)),
    bar: barOf(scale),
  };
}

/** Neighbours whose side is not known, on a line of their own: by distance where that is known, else at its end. */
export function lineLayout(
  plan: Plan,
  from: number,
  to: number,
): { metres: number; marks: { neighbour: PlanNeighbour; x: number; row: number }[] } {
  const lost = plan.neighbours.filter(({ bearing }) => bearing === null);
  const known = lost.flatMap(({ distanceMetres }) => (distanceMetres === null ? [] : [distanceMetres]));
  const metres = roundUp(Math.max(10, ...known, ...plan.rings.map((ring) => ring.metres)));
  const end = to - 34;
  const rows: number[] = [];
  const marks = lost
    .map((neighbour) => ({
      neighbour,
      x: neighbour.distanceMetres === null ? to - 8 : from + ((end - from) * neighbour.distanceMetres) / metres,
    }))
    .sort((one, other) => one.x - other.x)
    .map((mark) => {
      // Marks that would lie on one another stand one above the other.
      const free = rows.findIndex((last) => mark.x - last >= 18);
      const row = free === -1 ? rows.length : free;
      rows[row] = mark.x;
      return { ...mark, row };
    });
  return { metres, marks };
}

function around({ x, y }: Spot, side: number): Box {
  return { left: x - side / 2, right: x + side / 2, top: y - side / 2, bottom: y + side / 2 };
}

/** A round length of about a quarter of the drawing. */
function barOf(scale: number): { metres: number; length: number } {
  const longest = (planSide * 0.3) / scale;
  const tens = 10 ** Math.floor(Math.log10(longest));
  const metres = tens * ([5, 2, 1].find((step) => step * tens <= longest) ?? 1);
  return { metres, length: metres * scale };
}
