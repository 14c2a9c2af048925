/**
 * How far the lineage of a lot can be put in a figure.
 * "clonal": kept by division, no lineage; "uniform": one pure line, nothing to lose; "lines not known": a selfer's founder of which nobody
 * wrote whether it is one line or many, so that a percentage would say nothing; "plants not known": an ancestor's plants or shares were
 * not written; "counted": the figure stands.
 */
export type LineageStanding = "clonal" | "uniform" | "lines not known" | "plants not known" | "counted";

export interface LineageOfLot {
  readonly lineageFigures: boolean;
  readonly diversityRetained: number | null;
  /** numbers of the founder lots that its ancestry reaches */
  readonly founders: readonly string[];
}

/** Founders' lines by lot number: one, many, or null where nobody knows. */
export type FounderLines = ReadonlyMap<string, string | null>;

/** How a lot's lineage stands; `matingSystem` is its crop's. */
export function lineageStanding(lot: LineageOfLot, matingSystem: string | null, lines: FounderLines): LineageStanding {
  if (!lot.lineageFigures || matingSystem === "clonal") return "clonal";
  if (matingSystem === "selfing") {
    const of = lot.founders.map((number) => lines.get(number) ?? null);
    if (of.some((line) => line === null)) return "lines not known";
    if (of.length === 1 && of[0] === "one") return "uniform";
  }
  return lot.diversityRetained === null ? "plants not known" : "counted";
}

/** The lines of all founder lots, by lot number. */
export function founderLinesOf(
  lots: readonly { readonly number: string; readonly kind: string; readonly founderLines: string | null }[],
): FounderLines {
  return new Map(lots.filter((lot) => lot.kind === "founder").map((lot) => [lot.number, lot.founderLines]));
}
