import type { KinshipInput } from "@/lib/schemas/lots/lineage-claims";
import { type Refusal, refusal } from "@/lib/science/outcome";

/** The share of genes alike by descent belongs to the kind that says it, and to no other. */
export function coancestryFaults({ kind, coancestry }: Pick<KinshipInput, "kind" | "coancestry">): Refusal[] {
  if (kind === "coancestry" && coancestry === null)
    return [refusal("missing", ["coancestry"], "", "is the coancestry", "write a share from 0 to 1, as 0.125")];
  if (kind !== "coancestry" && coancestry !== null) {
    const needed = "choose “a coancestry that is known”, or leave it empty";
    return [refusal("coancestry-misplaced", ["coancestry"], coancestry, `does not go with “${kind}”`, needed)];
  }
  return [];
}
