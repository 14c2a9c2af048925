import type { Option } from "@/components/ui";

/** The kinds of ledger entry as they are chosen, and what each means for the jar. */
export const ledgerKindOptions: readonly (Option & { note?: string })[] = [
  { value: "weighed", words: "Weighed", note: "what is really in the jar; it sets the balance" },
  { value: "received", words: "Received", note: "came in from another hand" },
  { value: "harvested", words: "Harvested", note: "came in from the patch" },
  { value: "sown", words: "Sown" },
  { value: "tested", words: "Used in a test" },
  { value: "given", words: "Given away" },
  { value: "discarded", words: "Discarded" },
];

export const blendKindOptions: readonly Option[] = [
  { value: "blended-in", words: "Blended in" },
  { value: "blended-out", words: "Taken out for a blend" },
];

const past: Readonly<Record<string, string>> = {
  received: "received",
  harvested: "harvested",
  "blended-in": "blended in",
  sown: "sown",
  tested: "used in a test",
  given: "given",
  "blended-out": "taken for a blend",
  discarded: "discarded",
  weighed: "weighed",
};

/** What was done, for a line of the ledger. */
export function kindInWords(kind: string): string {
  return past[kind] ?? kind;
}
