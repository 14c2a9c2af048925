import { type Box, Boxes, overlap } from "./boxes";
import type { Grown } from "./generation";

/** What a label is of: the lot, the effective size at a waist, or the rate of foreign pollen at a thorn. */
export type LabelKind = "lot" | "waist" | "thorn";

/** A label as it is wanted: where it may stand, the best place first. */
export interface WantedLabel {
  readonly id: string;
  readonly kind: LabelKind;
  readonly name: string;
  /** a figure behind the name */
  readonly figure: string | null;
  /** smaller goes first */
  readonly rank: number;
  readonly places: readonly { readonly x: number; readonly y: number; readonly anchor: "start" | "middle" | "end" }[];
  /** the mark that it belongs to, which it may touch */
  readonly mark: Box | null;
  /** stands in any case: what it would cover gives way */
  readonly always: boolean;
}

export interface Label extends Box {
  readonly id: string;
  readonly kind: LabelKind;
  readonly name: string;
  readonly figure: string | null;
  readonly x: number;
  readonly y: number;
  readonly anchor: "start" | "middle" | "end";
}

/** One letter of a label in pixels, on the safe side, and a line above and below its foot. */
export const letter = { name: 6.9, figure: 6.7, above: 12, below: 4 } as const;
const gap = 5;

export function labelWidth(name: string, figure: string | null): number {
  return name.length * letter.name + (figure === null ? 0 : figure.length * letter.figure + (name === "" ? 0 : gap));
}

/** What labels keep off: marks and stems where they can, the rows of the bands' names always. */
export interface Obstacles {
  readonly marks: Boxes;
  readonly stems: Boxes;
  readonly rows: readonly Box[];
}

/**
 * Which labels stand, and where: one after the other by rank, each at its first place where it covers no label, no other lot's mark and no
 * stem, else the first where it covers no label and no mark; else it is left out. Those that stand in any case come first and may cover marks.
 */
export function placeLabels(
  wanted: readonly WantedLabel[],
  { marks, stems, rows }: Obstacles,
  width: number,
): readonly Label[] {
  const taken = new Boxes();
  const placed: Label[] = [];
  const ordered = wanted
    .map((label, place) => ({ label, place }))
    .sort(
      (a, b) => Number(b.label.always) - Number(a.label.always) || a.label.rank - b.label.rank || a.place - b.place,
    );
  for (const { label } of ordered) {
    const places = label.places.map((place) => standing(label, place, width));
    const free = places.filter((box) => !taken.hit(box) && !rows.some((row) => overlap(row, box)));
    const clear = free.filter((box) => !marks.hit(box, label.mark ?? undefined));
    const found = clear.find((box) => !stems.hit(box)) ?? clear[0] ?? (label.always ? free[0] : undefined);
    if (!found) continue;
    taken.add(found);
    placed.push(found);
  }
  return placed;
}

function standing(label: WantedLabel, place: WantedLabel["places"][number], width: number): Label {
  const size = labelWidth(label.name, label.figure);
  const wanted = place.anchor === "start" ? place.x : place.anchor === "end" ? place.x - size : place.x - size / 2;
  const left = Math.max(2, Math.min(width - size - 2, wanted));
  const x = place.anchor === "start" ? left : place.anchor === "end" ? left + size : left + size / 2;
  const { id, kind, name, figure } = label;
  return {
    id,
    kind,
    name,
    figure,
    x,
    y: place.y,
    anchor: place.anchor,
    left: left - 2,
    right: left + size + 2,
    top: place.y - letter.above,
    bottom: place.y + letter.below,
  };
}

/**
 * The rank by which lots keep their name where there is not room for all: asked for; compared; on the line that is traced; founders; with seed in
 * the jar; blends and lots that branch; stubs; the rest. Of equals the later.
 */
export function rankOfLot(
  { lot, children, year, links }: Grown,
  { selected, compared, traced }: Asked,
  lastYear: number,
): number {
  const by =
    lot.id === selected
      ? 0
      : lot.id === compared
        ? 1
        : traced?.has(lot.id)
          ? 2
          : links.length === 0
            ? 3
            : lot.living
              ? 4
              : lot.kind === "blend" || children.length > 1
                ? 5
                : lot.kind === "failed" || lot.kind === "growing"
                  ? 6
                  : 7;
  return by + Math.min(0.99, Math.max(0, (lastYear - year) / 1000));
}

/** What a person asked the picture for. */
export interface Asked {
  readonly selected: string | null;
  readonly compared: string | null;
  readonly traced: ReadonlySet<string> | null;
}
