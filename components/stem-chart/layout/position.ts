import type { StemBand, StemTree } from "../stem";
import { type Box, Boxes } from "./boxes";
import { type Widths, widthsCarried } from "./carried";
import { along } from "./curve";
import { type Fold, folds } from "./fold";
import type { Generations, Grown } from "./generation";
import { type Asked, type Label, placeLabels } from "./labels";
import type { OrderedBand } from "./order";
import { type PlacedStem, stemsTo, type Thorn, type ToldWay, thornOf, toldWay } from "./stems";
import { type ToneScale, toneOf, toneScale } from "./tones";
import { wantedLabels } from "./wanted-labels";
import { type Tick, yearScale } from "./year-scale";

/** What the picture is measured by. */
export interface Measures extends Asked {
  /** of the frame, in pixels */
  readonly width: number;
  /** 1: all years fit the frame; 2: half of them */
  readonly zoom: number;
  /** words that all lot numbers begin with and that are left out of the names */
  readonly withoutWord?: string;
}

export interface PlacedLot {
  readonly grown: Grown;
  readonly x: number;
  readonly y: number;
  /** where its moment can lie; both x where it is sharp */
  readonly left: number;
  readonly right: number;
  /** half of the widest stem about it */
  readonly half: number;
  readonly tone: number | null;
  /** its fold, where it is folded */
  readonly fold: string | null;
}

export interface PlacedBand {
  readonly band: StemBand;
  readonly top: number;
  readonly bottom: number;
}

export interface PlacedFold extends Fold {
  readonly x: number;
  readonly y: number;
  readonly half: number;
}

export interface StemPicture {
  readonly width: number;
  readonly height: number;
  readonly pixelsAYear: number;
  readonly full: number;
  readonly ticks: readonly Tick[];
  readonly bands: readonly PlacedBand[];
  readonly lots: readonly PlacedLot[];
  readonly stems: readonly PlacedStem[];
  readonly thorns: readonly Thorn[];
  readonly told: readonly ToldWay[];
  readonly folds: readonly PlacedFold[];
  readonly labels: readonly Label[];
  readonly tones: ToneScale | null;
}

export const axisHeight = 26;
/** The row of a band's name, which no label enters, and the room for labels over its first lane. */
const nameRow = 22;
const heading = nameRow + 24;
const underLane = 21;
const markHalf = 9;

/** The third step: years to the right, bands and lanes downwards, stems, folds and labels. */
export function position(
  tree: StemTree,
  grown: Generations,
  bands: readonly OrderedBand[],
  measures: Measures,
): StemPicture {
  const small = measures.width < 560;
  const full = small ? 15 : 21;
  const scale = yearScale(grown, measures.width, measures.zoom, small);
  const widths = widthsCarried(grown, full);
  const tones = toneScale(tree.lots);
  const keep = new Set([measures.selected, measures.compared, ...claimed(tree)].filter((id) => id !== null));
  const folded = folds(grown, bands, scale.pixelsAYear, keep);
  const foldOf = new Map(folded.flatMap((fold) => fold.lots.map((id) => [id, fold.id])));
  const place = new Map<string, PlacedLot>();
  const placedBands: PlacedBand[] = [];
  let top = axisHeight;
  for (const { band, lanes } of bands) {
    let foot = top + heading;
    for (const lane of lanes) {
      const ids = lane.flatMap((run) => run.lots);
      const half = Math.max(markHalf, ...ids.map((id) => (widths.get(id)?.high ?? full * 0.4) / 2));
      const y = foot + half;
      for (const run of lane) {
        run.lots.forEach((id, at) => {
          const own = grown.byId.get(id);
          if (!own) return;
          const near = run.lots.slice(Math.max(0, at - 1), at + 2);
          place.set(id, {
            grown: own,
            x: scale.at(own.year),
            y,
            left: own.fuzzy ? scale.at(own.fuzzy.first) : scale.at(own.year),
            right: own.fuzzy ? scale.at(own.fuzzy.last) : scale.at(own.year),
            half: Math.max(...near.map((each) => (widths.get(each)?.high ?? 0) / 2)),
            tone: toneOf(own.lot, tones),
            fold: foldOf.get(id) ?? null,
          });
        });
      }
      foot = y + half + underLane;
    }
    placedBands.push({ band, top, bottom: foot });
    top = foot;
  }
  const lots = grown.lots.flatMap(({ lot }) => place.get(lot.id) ?? []);
  const drawn = drawnStems(lots, place, widths, full, scale.pixelsAYear);
  const picture = {
    width: scale.width,
    height: top + 2,
    pixelsAYear: scale.pixelsAYear,
    full,
    ticks: scale.ticks,
    bands: placedBands,
    lots,
    ...drawn,
    told: toldWays(tree, place),
    folds: folded.flatMap((fold): PlacedFold[] => {
      const first = place.get(fold.lots[0] ?? "");
      if (!first) return [];
      const half = Math.max(...fold.lots.map((id) => (widths.get(id)?.high ?? 0) / 2));
      return [{ ...fold, x: (scale.at(fold.from) + scale.at(fold.to)) / 2, y: first.y, half }];
    }),
    tones,
  };
  return { ...picture, labels: labelled(picture, measures, widths) };
}

function claimed({ claims }: StemTree): (string | null)[] {
  return claims.flatMap((claim) => [claim.lotId, claim.parentId]);
}

function drawnStems(
  lots: readonly PlacedLot[],
  place: ReadonlyMap<string, PlacedLot>,
  widths: Widths,
  full: number,
  pixelsAYear: number,
): { stems: PlacedStem[]; thorns: Thorn[] } {
  const stems: PlacedStem[] = [];
  const thorns: Thorn[] = [];
  for (const lot of lots) {
    const to = stemsTo(lot, place, widths, full, pixelsAYear);
    stems.push(...to.stems);
    const main = to.curves[0];
    const thorn = thornOf(lot.grown, main, widths.get(lot.grown.lot.id)?.high ?? full * 0.4);
    if (thorn) thorns.push(thorn);
  }
  // Stems that cross bands lie under those that stay in theirs.
  const falls = ({ parent, child }: PlacedStem) => Math.abs((place.get(parent)?.y ?? 0) - (place.get(child)?.y ?? 0));
  return { stems: stems.sort((a, b) => falls(b) - falls(a)), thorns };
}

function toldWays({ claims }: StemTree, place: ReadonlyMap<string, PlacedLot>): ToldWay[] {
  const turns = new Map<string, number>();
  return claims.flatMap((claim) => {
    const turn = turns.get(claim.lotId) ?? 0;
    turns.set(claim.lotId, turn + 1);
    return toldWay(claim, turn, place) ?? [];
  });
}

function labelled(picture: Omit<StemPicture, "labels">, measures: Measures, widths: Widths): readonly Label[] {
  const marks = new Boxes();
  const stems = new Boxes();
  const boxes = new Map<string, Box>();
  for (const lot of picture.lots) {
    if (lot.fold) continue;
    const size = lot.grown.lot.living ? markHalf : 5;
    const box = { left: lot.x - size, right: lot.x + size, top: lot.y - size, bottom: lot.y + size };
    boxes.set(lot.grown.lot.id, box);
    marks.add(box);
  }
  for (const { parent, child, curve } of picture.stems) {
    const half = Math.max(3, widths.get(child)?.high ?? 3, widths.get(parent)?.high ?? 3) / 2;
    if (curve[0].y === curve[3].y) {
      stems.add({ left: curve[0].x, right: curve[3].x, top: curve[0].y - half, bottom: curve[0].y + half });
      continue;
    }
    let last = along(curve, 0.06);
    for (let piece = 1; piece <= 8; piece += 1) {
      const next = along(curve, 0.06 + (piece / 8) * 0.88);
      stems.add({
        left: Math.min(last.x, next.x) - 3,
        right: Math.max(last.x, next.x) + 3,
        top: Math.min(last.y, next.y),
        bottom: Math.max(last.y, next.y),
      });
      last = next;
    }
  }
  for (const { tip } of picture.thorns)
    marks.add({ left: tip.x - 3, right: tip.x + 7, top: tip.y, bottom: tip.y + 10 });
  const rows = picture.bands.map(({ top }) => ({ left: 0, right: picture.width, top, bottom: top + nameRow }));
  return placeLabels(wantedLabels(picture, measures, boxes, widths), { marks, stems, rows }, picture.width);
}
