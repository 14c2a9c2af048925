import type { Refusal } from "@/lib/science/outcome";
import type { StemTree } from "../stem";
import { type Generations, generations } from "./generation";
import { type OrderedBand, order } from "./order";
import { type Measures, position, type StemPicture } from "./position";

/** A tree in its order, which no zoom and no width changes. */
export interface OrderedTree {
  readonly tree: StemTree;
  readonly grown: Generations;
  readonly bands: readonly OrderedBand[];
  readonly faults: readonly Refusal[];
}

/** The first two steps: generation and order. */
export function orderTree(tree: StemTree): OrderedTree {
  const grown = generations(tree);
  return { tree, grown, bands: order(grown, tree.bands), faults: grown.faults };
}

/** The third: the picture at some width and zoom. The same tree and measures give the same picture. */
export function layStems({ tree, grown, bands }: OrderedTree, measures: Measures): StemPicture {
  return position(tree, grown, bands, measures);
}
