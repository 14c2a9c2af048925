import { type Path, type Refusal, refusal } from "@/lib/science/outcome";

/** Shares within this of 1 together are 1. */
const slack = 1e-6;

/** Several parents: each stands once, and their shares are all told and together 1, or none is. */
export function shareFaults(
  parents: readonly { readonly lot: string; readonly share: number | null }[],
  path: Path,
): Refusal[] {
  if (parents.length < 2) return [];
  const twice = parents.findIndex((parent, place) => parents.findIndex((each) => each.lot === parent.lot) < place);
  if (twice >= 0) {
    const needed = "choose another lot for one of the two, or say that nobody knows which it was";
    return [refusal("parent-twice", [...path, twice], parents[twice]?.lot, "is taken twice", needed)];
  }
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
