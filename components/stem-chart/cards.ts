/** What a lot's card says when it is opened, in words. */
export interface LotCard {
  readonly id: string;
  readonly number: string;
  /** of what kind it is and when: "harvest of October 2004" */
  readonly kind: string;
  readonly holder: string;
  readonly facts: readonly { readonly name: string; readonly value: string }[];
  /** what it still holds: "120 g", "none", "unknown" */
  readonly holds: string;
  /** when, for a list */
  readonly when: string;
  /** the whole in one sentence, for the ear */
  readonly spoken: string;
  readonly href: string;
}

export type LotCards = Readonly<Record<string, LotCard>>;
