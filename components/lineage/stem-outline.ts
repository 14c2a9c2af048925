interface Point {
  readonly x: number;
  readonly y: number;
}

const pieces = 22;

/**
 * The outline of a stem from one point to another, `start` thick at its beginning and `end` thick from its waist on, measured
 * across the stem at every place, and the line along its middle.
 */
export function stemOutline(from: Point, to: Point, start: number, end: number): { path: string; middle: string } {
  const bend = (to.x - from.x) * 0.5;
  const controls: readonly [Point, Point, Point, Point] = [
    from,
    { x: from.x + bend, y: from.y },
    { x: to.x - bend, y: to.y },
    to,
  ];
  const upper: string[] = [];
  const lower: string[] = [];
  for (let piece = 0; piece <= pieces; piece++) {
    const at = piece / pieces;
    const point = along(controls, at);
    const way = direction(controls, at);
    const half = (start + (end - start) * eased(Math.min(1, at / 0.55))) / 2;
    upper.push(place({ x: point.x - way.y * half, y: point.y + way.x * half }));
    lower.push(place({ x: point.x + way.y * half, y: point.y - way.x * half }));
  }
  const middle = `M${place(from)}C${place(controls[1])} ${place(controls[2])} ${place(to)}`;
  return { path: `M${upper.join("L")}L${lower.reverse().join("L")}Z`, middle };
}

function along([a, b, c, d]: readonly [Point, Point, Point, Point], at: number): Point {
  const rest = 1 - at;
  const weigh = (key: "x" | "y") =>
    rest ** 3 * a[key] + 3 * rest ** 2 * at * b[key] + 3 * rest * at ** 2 * c[key] + at ** 3 * d[key];
  return { x: weigh("x"), y: weigh("y") };
}

function direction([a, b, c, d]: readonly [Point, Point, Point, Point], at: number): Point {
  const rest = 1 - at;
  const weigh = (key: "x" | "y") =>
    3 * rest ** 2 * (b[key] - a[key]) + 6 * rest * at * (c[key] - b[key]) + 3 * at ** 2 * (d[key] - c[key]);
  const [x, y] = [weigh("x"), weigh("y")];
  const length = Math.hypot(x, y);
  return length === 0 ? { x: 1, y: 0 } : { x: x / length, y: y / length };
}

function eased(at: number): number {
  return at * at * (3 - 2 * at);
}

function place(point: Point): string {
  return `${Math.round(point.x * 10) / 10} ${Math.round(point.y * 10) / 10}`;
}
