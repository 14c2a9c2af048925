import { type Refusal, refusal } from "@/lib/science/outcome";

/** A share of foreign pollen with each source's part of it. */
export interface ShareOfSources {
  /** 0..1 */
  readonly foreignShare: number;
  /** each source's part of it, in the order given; they sum to it */
  readonly bySource: readonly { readonly id: string; readonly share: number }[];
  /** the source with the largest part, the first of equals; null where there is none */
  readonly largest: string | null;
}

/** Sums the parts of the sources. */
export function shareOfSources(bySource: ShareOfSources["bySource"]): ShareOfSources {
  const largest = bySource.reduce<ShareOfSources["bySource"][number] | null>(
    (most, each) => (most === null || each.share > most.share ? each : most),
    null,
  );
  return {
    foreignShare: Math.min(
      1,
      bySource.reduce((sum, each) => sum + each.share, 0),
    ),
    bySource,
    largest: largest?.id ?? null,
  };
}

/** A refusal for each source whose id stands further up already. */
export function repeatedIds(sources: readonly { readonly id: string }[]): Refusal[] {
  const seen = new Set<string>();
  return sources.flatMap(({ id }, index) => {
    if (!seen.has(id)) {
      seen.add(id);
      return [];
    }
    const needed = "each source has an id of its own";
    return [refusal("repeated-id", ["sources", index, "id"], id, "names two sources", needed)];
  });
}
