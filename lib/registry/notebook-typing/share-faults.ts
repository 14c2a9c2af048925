import { type Path, type Refusal, refusal } from "@/lib/science/outcome";

/** Shares within this of 1 together are 1. */
const slack = 1e-6;

/** Shares of several parents: all of them told and together 1, or none. */
export function shareFaults(parents: readonly { readonly share: number | null }[], path: Path): Refusal[] {
  if (parents.length < 2) return [];
  const told = parents.flatMap((parent) => parent.share ?? []);
  if (told.length === 0) return [];
  if (told.length < parents.length) {
    return [
      refusal("share-missing", path, told.length, `of ${parents.length} shares are told`, "say all of them, or none"),
    ];
  }
  const sum = told.reduce((together, share) => together + share, 0);
  if (Math.abs(sum - 1) <= slack) return [];
  return [
    refusal("shares-not-one", path, Math.round(sum * 1000) / 1000, "is what the shares come to", "together they are 1"),
  ];
}
