import { faultsAmong, finiteFault, positiveFault } from "@/lib/science/limits";
import type { Path, Refusal } from "@/lib/science/outcome";

/** A piece of ground with its sides along the axes: its lower left corner, width and height in metres. */
export interface Rectangle {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface Point {
  readonly x: number;
  readonly y: number;
}

/** What is wrong with a rectangle's numbers. */
export function rectangleFaults(rectangle: Rectangle, at: Path): Refusal[] {
  return faultsAmong(
    finiteFault(at, "x", rectangle.x),
    finiteFault(at, "y", rectangle.y),
    positiveFault(at, "width", rectangle.width),
    positiveFault(at, "height", rectangle.height),
  );
}

/** Whether two rectangles share ground; an edge in common is none, nor is the dust of binary numbers. */
export function shareGround(one: Rectangle, other: Rectangle): boolean {
  const across = Math.min(one.x + one.width, other.x + other.width) - Math.max(one.x, other.x);
  const up = Math.min(one.y + one.height, other.y + other.height) - Math.max(one.y, other.y);
  return across > 1e-9 * Math.min(one.width, other.width) && up > 1e-9 * Math.min(one.height, other.height);
}

/** The distance from a point to the nearest place of a rectangle, in metres; 0 within it. */
export function distanceTo({ x, y }: Point, rectangle: Rectangle): number {
  const across = Math.max(rectangle.x - x, 0, x - rectangle.x - rectangle.width);
  const up = Math.max(rectangle.y - y, 0, y - rectangle.y - rectangle.height);
  return Math.hypot(across, up);
}
