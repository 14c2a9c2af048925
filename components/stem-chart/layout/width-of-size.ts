/** The effective size whose stem is drawn at full width. */
export const fullSize = 200;
const widest = 4 * fullSize;
const thinnest = 1.8;

/**
 * How wide a stem of an effective size is drawn, in pixels, where one of 200 is `full` wide: full·√(Ne / 200), never under a hair and from 800 on no
 * wider. The chance change of an allele's share in one grow-out has the standard deviation √(p·q / 2Ne), so that half the width is twice the
 * drift; 10 and 200 stand 1 to 4.5. Source: binomial sampling of genes, Wright 1931, Genetics 16:97-159.
 */
export function widthOfSize(effectiveSize: number, full: number): number {
  return Math.max(thinnest, full * Math.sqrt(Math.min(widest, Math.max(0, effectiveSize)) / fullSize));
}
