import { Draws } from "./draws";
import type { GrowOut } from "./grow-out";
import type { Telling } from "./telling";

interface Scored {
  readonly plants: number;
  readonly kept: number;
  /** seed of each kept plant, where it was weighed */
  readonly grams?: readonly number[];
  readonly colours?: readonly string[];
  readonly forms?: readonly string[];
  /** usual days from sowing to flower, where they were noted */
  readonly flowers?: number;
}

/** Plants of a grow-out that were marked and scored one by one, block by block. The kept ones come first. */
export function scorePlants(tell: Telling, growOut: GrowOut, scored: Scored): void {
  const draws = new Draws(`plants ${growOut.name}`);
  const { plants, kept, grams, colours, forms, flowers } = scored;
  for (let place = 0; place < plants; place++) {
    const isKept = place < kept;
    const seed = isKept ? grams?.[place] : undefined;
    const vigour =
      seed === undefined ? draws.whole(isKept ? 5 : 2, isKept ? 9 : 6) : Math.min(9, 5 + Math.floor(seed / 30));
    tell.book.write("plants.csv", {
      grow_out: growOut.name,
      plant: String(place + 1),
      cell: `${"ABCDEFGH"[Math.floor(place / 10)]}${(place % 10) + 1}`,
      kept: isKept ? "yes" : "no",
      seed_grams: seed,
      "score:vigour": vigour,
      "score:colour": colours && draws.pick(isKept ? colours.slice(0, -1) : colours),
      "score:form": forms && draws.pick(isKept ? forms.slice(0, -1) : forms),
      "score:days to flower": flowers && draws.whole(flowers - 6, flowers + 8),
    });
  }
}
