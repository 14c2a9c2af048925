/** The kinds of record that a search finds, in the order in which a page lists them. */
export const foundKinds = ["variety", "lot", "grow-out", "test", "steward", "story", "note"] as const;
export type FoundKind = (typeof foundKinds)[number];

/** One text of a record that can be searched. `slips` says whether a slip of the pen is forgiven in it: in names, not in prose. */
export interface IndexedText {
  readonly words: string;
  /** folded, for comparing */
  readonly folded: string;
  readonly slips: boolean;
  /** what the text is, where it is not the record's own name: "another name", "label code" */
  readonly as: string | null;
}

/** A record as the search holds it. */
export interface IndexedRecord {
  readonly kind: FoundKind;
  readonly id: string;
  readonly title: string;
  /** what it belongs to: the crop of a variety, the variety of a lot */
  readonly of: string | null;
  /** the record whose page shows it, where that is another one */
  readonly page: { readonly kind: "variety" | "lot" | "grow-out" | "test" | "steward"; readonly id: string };
  readonly texts: readonly IndexedText[];
}
