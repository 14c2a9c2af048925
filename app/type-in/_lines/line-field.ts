import type { LineProposal } from "@/lib/exchange/notebook-lines/proposal";
import type { Certainty, Count, FactKind } from "@/lib/exchange/notebook-lines/reading";
import { numberShown } from "./told-numbers";
import type { ReadLine } from "./typed-line";

/** One thing that a line says, as it stands beside the words: it can be changed, and most can be left out. */
export interface LineField {
  /** names it among the fixes */
  readonly key: string;
  readonly label: string;
  /** null: not said; it can be said here */
  readonly text: string | null;
  readonly certainty: Certainty;
  readonly kind: "year" | "date" | "count" | "amount" | "words" | "lot" | "share" | "shares" | "test" | "kept";
  readonly canDrop: boolean;
}

/** A field that can be left out again. */
export function field(
  key: string,
  label: string,
  text: string | null,
  certainty: Certainty,
  kind: LineField["kind"],
): LineField {
  return { key, label, text, certainty, kind, canDrop: true };
}

/** A lot that the line leans on: another can be chosen, none cannot. */
export function lotField(key: string, label: string, lot: { lot: string; assumed: boolean } | null): LineField[] {
  if (lot === null) return [];
  return [{ key, label, text: lot.lot, certainty: lot.assumed ? "doubtful" : "sure", kind: "lot", canDrop: false }];
}

export function countField(key: string, label: string, told: Count | null, certainty: Certainty): LineField {
  return field(key, label, told === null ? null : numberShown(told), certainty, "count");
}

/** How sure the reading of a kind of fact is; likely where no words stand for it. */
export function certaintyOf(line: ReadLine): (kind: FactKind) => Certainty {
  return (kind) => line.understood.find((fact) => fact.kind === kind)?.certainty ?? "likely";
}

export function isAssumed(proposal: LineProposal, code: string): boolean {
  return proposal.assumed.some((each) => each.code === code);
}
