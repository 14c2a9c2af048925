import type { Option } from "@/components/ui";
import { plainNumber } from "@/lib/display/numbers";
import type { KinshipRead } from "@/lib/registry/kinships/read-kinships";
import type { KinshipKind } from "@/lib/schemas/lots/lineage-claims";

/** How two founder lots can be related, as the form offers it. */
export const kinshipOptions: readonly (Option & { readonly value: KinshipKind; readonly note: string })[] = [
  { value: "unrelated", words: "Unrelated", note: "of two regions, two old keepings that never met" },
  {
    value: "same source",
    words: "Of the same source",
    note: "two packets of one bag: as close to each other as the older is to itself",
  },
  {
    value: "coancestry",
    words: "A coancestry that is known",
    note: "from a pedigree or a marker test: the chance that two genes, one of each, are copies of one",
  },
];

/** `Unrelated`, `Of the same source`, `Coancestry 0.125`. */
export function kinshipInWords({ kind, coancestry }: KinshipRead): string {
  if (kind === "coancestry" && coancestry !== null) return `coancestry ${plainNumber(coancestry, 4)}`;
  return kind === "same source" ? "of the same source" : kind;
}
