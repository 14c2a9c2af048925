/** A box on the chart, in pixels. */
export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** A name that wants to stand beside its last value. */
export interface WantedName {
  readonly name: string;
  /** where its value is drawn */
  readonly x: number;
  readonly y: number;
}

/** A name in its place; `moved`: so far from its value that a line has to lead to it. */
export interface PlacedName extends WantedName {
  readonly at: { readonly x: number; readonly y: number; readonly anchor: "start" | "end" };
  readonly moved: boolean;
}

const letter = 7.4;
const height = 15;
const beside = 12;
const steps = [0, 16, -16, 32, -32, 48, -48, 64, -64, 80, 96, 112, 128];
const aways = [beside, 30, 50, 74];

/**
 * Names beside their values so that none lies over another, over a mark or outside the chart: to the right where there is room, then
 * below, above, further off, then to the left. A name for which there is no room is left out; the figures beside the chart have it.
 */
export function placedNames(wanted: readonly WantedName[], marks: readonly Box[], area: Box): readonly PlacedName[] {
  const taken: Box[] = [...marks];
  const placed: PlacedName[] = [];
  for (const want of [...wanted].sort((a, b) => a.y - b.y || a.x - b.x)) {
    const found = places(want).find(
      ({ box }) =>
        box.left >= area.left &&
        box.right <= area.right &&
        box.top >= area.top &&
        box.bottom <= area.bottom &&
        !taken.some((other) => overlap(box, other)),
    );
    if (!found) continue;
    taken.push(found.box);
    placed.push({ ...want, at: found.at, moved: found.moved });
  }
  return placed;
}

/** Every place that a name may take, the nearest first. */
function places({ name, x, y }: WantedName): { at: PlacedName["at"]; box: Box; moved: boolean }[] {
  const width = name.length * letter;
  return (["start", "end"] as const).flatMap((anchor) =>
    aways.flatMap((away) =>
      steps.map((step) => {
        const at = { x: anchor === "start" ? x + away : x - away, y: y + step + 4, anchor };
        const left = anchor === "start" ? at.x : at.x - width;
        return {
          at,
          box: { left, right: left + width, top: at.y - height + 3, bottom: at.y + 3 },
          moved: away > beside || step !== 0,
        };
      }),
    ),
  );
}

function overlap(a: Box, b: Box): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}
