import type { Option } from "@/components/ui";
import { dateInWords } from "@/lib/display/dates";
import { counted } from "@/lib/display/plurals";
import type { ClaimOfLot } from "@/lib/registry/claims/read-claims";
import type { ClaimKind, ClaimStanding, claimSureness } from "@/lib/schemas/lots/lineage-claims";

/** What can be said of where a lot is from, as its form offers it. */
export const claimKindOptions: readonly (Option & { readonly value: ClaimKind; readonly note: string })[] = [
  {
    value: "descends from",
    words: "It descends from an earlier lot",
    note: "by grow-outs that are not on record here, however many lie between",
  },
  { value: "same as", words: "It is the same seed as another lot", note: "and nobody has shown that yet" },
  { value: "unknown before", words: "Nothing is known before here", note: "the line begins with this lot" },
];

export const standingOptions: readonly (Option & { readonly value: ClaimStanding; readonly note: string })[] = [
  { value: "open", words: "Open", note: "it may be so" },
  { value: "believed", words: "Believed", note: "as far as anybody can tell" },
  { value: "set aside", words: "Set aside", note: "it stays to be read, and counts for nothing" },
];

const sureness: Readonly<Record<(typeof claimSureness)[number], string>> = {
  "first hand": "the teller was there",
  "told by the person": "told by the one who was there",
  "told by another": "told by somebody who had heard it",
  "from a label": "it stood on a label",
  guess: "a guess",
};

export const surenessOptions: readonly Option[] = Object.entries(sureness).map(([value, words]) => ({ value, words }));

/** What a claim says, without the words in which it was told: "Descends from lot Quern 1, 2 to 4 generations back". */
export function claimInShort({ kind, parent, generationsFirst, generationsLast }: ClaimOfLot): string {
  if (kind === "unknown before") return "Nothing is known before here";
  const lot = parent === null ? "a lot that is not on record" : `lot ${parent}`;
  if (kind === "same as") return `The same seed as ${lot}`;
  return `Descends from ${lot}${generationsInWords(generationsFirst, generationsLast)}`;
}

function generationsInWords(first: number | null, last: number | null): string {
  if (first === null) return ", nobody knows how many generations back";
  if (last === null || last === first) return `, ${counted(first, "generation")} back`;
  return `, ${first} to ${counted(last, "generation")} back`;
}

/** Who told it, when, and how sure that is; `told by Ana Quernby, 1999, a guess`. */
export function toldBy({ teller, toldOn, howSure, writtenBy }: ClaimOfLot): string {
  const parts = [
    teller ? `told by ${teller}` : "teller not written down",
    toldOn ? dateInWords(toldOn) : "",
    howSure ? (sureness[howSure as keyof typeof sureness] ?? howSure) : "nobody wrote how sure",
    writtenBy ? `written down by ${writtenBy}` : "",
  ];
  return parts.filter(Boolean).join(", ");
}

/** How it stands, with the reason: `believed: the same grey eye`. */
export function standsInWords({ standing, standingReason }: ClaimOfLot): string {
  return standingReason ? `${standing}: ${standingReason}` : standing;
}
