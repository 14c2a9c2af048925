import { along, type Curve, curveBetween, type Point } from "./curve";

/** A stalk is long from so many pixels across on, and falls from so many on. */
const longAcross = 160;
const longDown = 40;
/** Nearer than this to the mark of another lot it would be taken for that lot's. */
const clear = 20;
const looks = 32;

/**
 * The way of a stalk. A short one goes as a stem does. One that goes far through the years and the bands would pass by other lots as if it came
 * of them: of several ways (as a stem; level and then down; down and then level; aslant) it takes the one that keeps clearest of their marks, of
 * equals the first. Takes places in pixels.
 */
export function stalkWay(from: Point, to: Point, marks: Iterable<Point>): Curve {
  const plain = curveBetween(from, to);
  const [across, down] = [to.x - from.x, to.y - from.y];
  if (across < longAcross || Math.abs(down) < longDown) return plain;
  const near = [...marks].filter((mark) => {
    const own = isAt(mark, from) || isAt(mark, to);
    const beside = mark.y > Math.min(from.y, to.y) - 2 * clear && mark.y < Math.max(from.y, to.y) + 2 * clear;
    return !own && beside && mark.x > from.x - clear && mark.x < to.x + clear;
  });
  const ways: Curve[] = [plain];
  for (const late of [1, 0.9, 0.75]) ways.push(way(from, to, { x: late, y: 0 }, { x: 1, y: 0.04 }));
  for (const fall of [0.25, 0.45, 0.7, 1]) ways.push(way(from, to, { x: 0, y: fall }, { x: 0.3, y: 1 }));
  for (const fall of [0.12, 0.3, 0.5, 0.8]) ways.push(way(from, to, { x: 0.02, y: fall }, { x: 0.95, y: fall }));
  let best = plain;
  let least = Number.POSITIVE_INFINITY;
  for (const each of ways) {
    const met = closeness(each, near);
    if (met < least - 1e-9) {
      best = each;
      least = met;
    }
  }
  return best;
}

function way(from: Point, to: Point, one: Point, other: Point): Curve {
  const at = ({ x, y }: Point) => ({ x: from.x + x * (to.x - from.x), y: from.y + y * (to.y - from.y) });
  return [from, at(one), at(other), to];
}

function isAt(mark: Point, { x, y }: Point): boolean {
  return Math.abs(mark.x - x) < 1 && Math.abs(mark.y - y) < 1;
}

/** How near a way comes to marks, summed over them: 0 where it keeps clear of all. */
function closeness(curve: Curve, marks: readonly Point[]): number {
  const points = Array.from({ length: looks - 1 }, (_, look) => along(curve, (look + 1) / looks));
  let sum = 0;
  for (const mark of marks) {
    let nearest = clear;
    points.forEach((point, place) => {
      const next = points[place + 1];
      if (!next) return;
      nearest = Math.min(nearest, distance(mark, point, next));
    });
    sum += (clear - nearest) / clear;
  }
  return sum;
}

/** From a point to a piece of a line. */
function distance(mark: Point, from: Point, to: Point): number {
  const [x, y] = [to.x - from.x, to.y - from.y];
  const length = x * x + y * y;
  const at = length === 0 ? 0 : Math.max(0, Math.min(1, ((mark.x - from.x) * x + (mark.y - from.y) * y) / length));
  return Math.hypot(mark.x - from.x - at * x, mark.y - from.y - at * y);
}
