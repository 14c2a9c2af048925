import type { Generations, Grown } from "./generation";
import type { OrderedBand } from "./order";

/** Lots of an unbranched run that stand too close to be told apart: one bead in their place, which opens to them. */
export interface Fold {
  readonly id: string;
  readonly lots: readonly string[];
  readonly from: number;
  readonly to: number;
}

/** Two lots of a run that are nearer than this, in pixels, can be folded. */
export const foldBelow = 26;
const fewest = 2;

/**
 * Which lots are folded at so many pixels a year: those inside a run with one parent and one child in it, and nothing to tell besides (no foreign
 * pollen, no doubt about the year, no living seed, not asked for).
 */
export function folds(
  { byId }: Generations,
  bands: readonly OrderedBand[],
  pixelsAYear: number,
  keep: ReadonlySet<string>,
): readonly Fold[] {
  const found: Fold[] = [];
  for (const { lanes } of bands) {
    for (const run of lanes.flat()) {
      let inside: Grown[] = [];
      const close = () => {
        const [first, last] = [inside[0], inside.at(-1)];
        if (inside.length >= fewest && first && last)
          found.push({ id: first.lot.id, lots: inside.map(({ lot }) => lot.id), from: first.year, to: last.year });
        inside = [];
      };
      run.lots.forEach((id, place) => {
        const own = byId.get(id);
        const [before, after] = [byId.get(run.lots[place - 1] ?? ""), byId.get(run.lots[place + 1] ?? "")];
        const near = (one: Grown, other: Grown) => Math.abs(one.year - other.year) * pixelsAYear < foldBelow;
        if (own && before && after && plain(own, keep) && near(before, own) && near(own, after)) inside.push(own);
        else close();
      });
      close();
    }
  }
  return found;
}

function plain({ lot, links, children, fuzzy, gap }: Grown, keep: ReadonlySet<string>): boolean {
  const unbranched = links.length === 1 && children.length === 1 && lot.kind === "harvest";
  return unbranched && !lot.foreign && !fuzzy && !gap && !lot.living && !keep.has(lot.id);
}
