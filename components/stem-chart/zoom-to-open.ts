import { zooms } from "./address";
import { foldBelow } from "./layout/fold";
import type { PlacedFold, StemPicture } from "./layout/position";

/** The least zoom at which the lots of a fold stand apart; the greatest where none does. */
export function zoomToOpen(picture: StemPicture, fold: PlacedFold, zoom: number): number {
  const years = fold.lots.flatMap((id) => picture.lots.find(({ grown }) => grown.lot.id === id)?.grown.year ?? []);
  const apart = years.slice(1).map((year, place) => year - (years[place] ?? year));
  const least = Math.max(0.05, Math.min(...apart, 1));
  const wanted = (foldBelow / (least * picture.pixelsAYear)) * zoom;
  return zooms.find((each) => each > zoom && each >= wanted) ?? zooms[zooms.length - 1] ?? zoom;
}
