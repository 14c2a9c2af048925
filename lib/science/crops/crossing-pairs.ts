import pairs from "./crossing-pairs.json";

/** Two members of a crossing group: how fully they cross (factor 0..1), in which direction, on what evidence. */
export interface CrossingPair {
  readonly group: string;
  readonly memberA: string;
  readonly memberB: string;
  readonly cropKeysA: readonly string[];
  readonly cropKeysB: readonly string[];
  readonly relation: string;
  readonly degree: string;
  readonly direction: string;
  readonly factor: number | null;
  readonly factorNote: string | null;
  readonly f1Fertility: string | null;
  readonly evidence: string | null;
  readonly sources: string | null;
  readonly verified: string | null;
}

/** The pairs that the registry starts with; a crop with itself stands in them as a pair of its members. */
export function crossingPairs(): readonly CrossingPair[] {
  return pairs as unknown as readonly CrossingPair[];
}
