/** The words that a cell of the notebook folder may hold where it chooses among a few. */
export const stewardKinds = ["grower", "library", "genebank"] as const;
export type StewardKind = (typeof stewardKinds)[number];

export const lotKinds = ["founder", "harvest", "blend", "split"] as const;
export type LotKind = (typeof lotKinds)[number];

/** What came in, what left, and `weighed`, which sets the balance. */
export const ledgerKinds = [
  "received",
  "harvested",
  "blended-in",
  "sown",
  "tested",
  "given",
  "blended-out",
  "discarded",
  "weighed",
] as const;
export type LedgerKind = (typeof ledgerKinds)[number];

export const yesNo = ["yes", "no"] as const;

/** How a grow-out's seed parents shared in its seed; `plants`: by the seed of each kept plant. */
export type SeedSharesCell = "equal" | "plants" | { readonly cv: number };

/** A lot and its share, 0..1, of the plants sown or of the living seeds mixed. */
export interface LotShare {
  readonly lot: string;
  readonly share: number;
}

/** Where a lot came from: the grow-out of a harvest, the lots of a blend, the one lot of a split. */
export type LotSource = { readonly growOut: string } | { readonly lots: readonly LotShare[] };
