import type { Ends, SizeEnds } from "../stem";
import type { Generations } from "./generation";
import { fullSize, widthOfSize } from "./width-of-size";

/** Where nothing bounds a size, the stem is drawn at most as wide as that of 200, or as its low end. */
function sizeAcross({ low, high }: SizeEnds, full: number): Ends {
  return { low: widthOfSize(low, full), high: widthOfSize(high ?? Math.max(low, fullSize), full) };
}

/** How wide the stem of each lot is in pixels, low and high end; null where nobody counted. */
export type Widths = ReadonlyMap<string, Ends | null>;

/**
 * The width that a lot carries on: of a harvest that of its grow-out's effective size; a split carries its lot's, a blend the mean of its parts by
 * their shares, since neither passes through plants. A founder's plants nobody counted, and what is not known of a part is not known of a blend.
 */
export function widthsCarried({ lots }: Generations, full: number): Widths {
  const widths = new Map<string, Ends | null>();
  for (const { lot, links } of lots) {
    const size = lot.size;
    if (lot.kind === "harvest" || lot.kind === "founder") {
      widths.set(lot.id, size && sizeAcross(size, full));
      continue;
    }
    const parts = links.map(({ parent, share }) => ({ share, width: widths.get(parent) ?? null }));
    const whole =
      parts.length > 0 && lot.kind !== "failed" && lot.kind !== "growing" && parts.every(({ width }) => width !== null);
    const mean = (end: "low" | "high") => parts.reduce((sum, { share, width }) => sum + share * (width?.[end] ?? 0), 0);
    widths.set(lot.id, whole ? { low: mean("low"), high: mean("high") } : null);
  }
  return widths;
}
