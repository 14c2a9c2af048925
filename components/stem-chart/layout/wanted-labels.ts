import { foreignShare } from "@/lib/display/foreign-share";
import { keptSpan } from "@/lib/display/kept-span";
import { effectiveSize, percent } from "@/lib/display/numbers";
import type { Ends, SizeEnds } from "../stem";
import type { Box } from "./boxes";
import type { Widths } from "./carried";
import { rankOfLot, type WantedLabel } from "./labels";
import type { Measures, PlacedLot, StemPicture } from "./position";

/** Waists are named where a grow-out was at most this share of the stem before it. */
const narrowed = 0.75;
const wide = 60;

/** Every label that the picture would have if there were room. */
export function wantedLabels(
  picture: Omit<StemPicture, "labels">,
  measures: Measures,
  boxes: ReadonlyMap<string, Box>,
  widths: Widths,
): WantedLabel[] {
  const lastYear = Math.max(...picture.lots.map(({ grown }) => grown.year));
  const narrowest = Math.min(...picture.lots.map(({ grown }) => counted(grown.lot.size) ?? Number.POSITIVE_INFINITY));
  const thorns = new Map(picture.thorns.map((thorn) => [thorn.lot, thorn]));
  return picture.lots.flatMap((lot) => {
    const { grown } = lot;
    const own = grown.lot;
    if (lot.fold) return [];
    const mark = boxes.get(own.id) ?? null;
    const labels: WantedLabel[] = [
      {
        id: own.id,
        kind: "lot",
        name: nameOf(own.number, measures.withoutWord),
        figure: own.living && own.kept ? keptInFew(own.kept) : null,
        rank: rankOfLot(grown, measures, lastYear),
        places: placesOf(lot),
        mark,
        always: own.id === measures.selected,
      },
    ];
    const thorn = thorns.get(own.id);
    if (thorn && own.foreign?.rate != null) {
      const { x, y } = thorn.tip;
      labels.push({
        ...common(own.id, mark),
        kind: "thorn",
        figure: foreignShare(own.foreign.rate),
        rank: 1.5,
        places: [
          { x: x - 7, y: y + 7, anchor: "end" },
          { x, y: y - 4, anchor: "middle" },
          { x: x + 11, y: y + 7, anchor: "start" },
        ],
      });
    }
    const size = counted(own.size);
    if (size !== null && isWaist(lot, size, widths, narrowest)) {
      labels.push({
        ...common(own.id, mark),
        kind: "waist",
        figure: effectiveSize(size),
        rank: size === narrowest ? 1.4 : 2.5 + size / 1000,
        places: [
          { x: lot.x, y: lot.y - Math.max(10, lot.half + 3), anchor: "middle" },
          { x: lot.x, y: lot.y + Math.max(20, lot.half + 13), anchor: "middle" },
        ],
      });
    }
    return labels;
  });
}

function common(id: string, mark: Box | null) {
  return { id, name: "", mark, always: false } as const;
}

function nameOf(number: string, word: string | undefined): string {
  return word && number.startsWith(word) ? number.slice(word.length) : number;
}

/** A size that stands as one figure; null where the records allow several, which no single one may stand for. */
function counted(size: SizeEnds | null): number | null {
  return size !== null && size.low === size.high ? size.low : null;
}

/** "94 %", or the span of what the records allow. */
function keptInFew(kept: Ends): string {
  return kept.low < kept.high ? keptSpan(kept) : percent(kept.low, 0);
}

/** Below, above, and of a lot that ends here first to its right. */
function placesOf({ x, y, half, grown }: PlacedLot): WantedLabel["places"] {
  const off = Math.max(8, half);
  const across = [
    { x, y: y + off + 13, anchor: "middle" as const },
    { x, y: y - off - 4, anchor: "middle" as const },
  ];
  if (grown.children.length > 0) return across;
  return [{ x: x + 15, y: y + 4.5, anchor: "start" as const }, ...across];
}

/** The narrowest grow-out of all, and where a stem becomes much narrower than it was. */
function isWaist({ grown }: PlacedLot, size: number, widths: Widths, narrowest: number): boolean {
  if (size === narrowest) return true;
  if (size > wide) return false;
  const own = widths.get(grown.lot.id)?.low ?? 0;
  const before = Math.max(0, ...grown.links.map(({ parent }) => widths.get(parent)?.low ?? 0));
  return before > 0 && own <= narrowed * before;
}
