import { foreignShare } from "@/lib/display/foreign-share";
import { effectiveSize, percent } from "@/lib/display/numbers";
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
  const narrowest = Math.min(...picture.lots.map(({ grown }) => grown.lot.size?.low ?? Number.POSITIVE_INFINITY));
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
        figure: own.living && own.kept ? percent((own.kept.low + own.kept.high) / 2, 0) : null,
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
    if (own.size && isWaist(lot, picture, widths, narrowest)) {
      labels.push({
        ...common(own.id, mark),
        kind: "waist",
        figure: effectiveSize(own.size.low),
        rank: own.size.low === narrowest ? 1.4 : 2.5 + own.size.low / 1000,
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
function isWaist(
  { grown }: PlacedLot,
  picture: Omit<StemPicture, "labels">,
  widths: Widths,
  narrowest: number,
): boolean {
  const size = grown.lot.size;
  if (!size) return false;
  if (size.low === narrowest) return true;
  if (size.low > wide) return false;
  const own = widths.get(grown.lot.id)?.low ?? 0;
  const before = Math.max(0, ...grown.links.map(({ parent }) => widths.get(parent)?.low ?? 0));
  return before > 0 && own <= narrowed * before && picture.full > 0;
}
