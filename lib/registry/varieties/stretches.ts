import { harmonicMeanSize, type SizeSpan } from "@/lib/science/effective-size/harmonic-mean-size";

/** A grow-out with what it was sown from: one grow-out alone (through however many splits), or null where lines join or begin. */
export interface GrowOutInLine {
  readonly id: string;
  readonly before: string | null;
  /** plants; null where nothing is known of it */
  readonly size: SizeSpan | null;
}

/** Grow-outs one after the other, each sown from the last alone. */
export interface Stretch<G extends GrowOutInLine> {
  readonly growOuts: readonly G[];
  /** the one effective size that they come to together; null where of one nothing is known */
  readonly together: SizeSpan | null;
}

/**
 * The grow-outs behind a lot in stretches: a stretch ends where lines join (a blend, several lots sown) and where one parts into two. In the
 * order in which the grow-outs stand.
 */
export function stretchesOf<G extends GrowOutInLine>(growOuts: readonly G[]): Stretch<G>[] {
  const followers = new Map<string, G[]>();
  for (const each of growOuts) {
    if (each.before !== null) followers.set(each.before, [...(followers.get(each.before) ?? []), each]);
  }
  const known = new Set(growOuts.map(({ id }) => id));
  const goesOn = (id: string) => followers.get(id)?.length === 1;
  const heads = growOuts.filter(({ before }) => before === null || !known.has(before) || !goesOn(before));
  return heads.map((head) => {
    const line = [head];
    for (let last = head; goesOn(last.id); ) {
      last = followers.get(last.id)?.[0] as G;
      line.push(last);
    }
    const sizes = line.flatMap(({ size }) => size ?? []);
    return { growOuts: line, together: sizes.length === line.length ? harmonicMeanSize(sizes) : null };
  });
}
