import type { GrowOutLot, SownShare } from "@/lib/science/lineage/lots";
import { type Path, type Refusal, refusal } from "@/lib/science/outcome";

type Cross = Pick<GrowOutLot, "sexes" | "plants"> & { readonly parents: readonly Partial<SownShare>[] };

/** What is wrong with a cross: one lot gives the seed parents and one the pollen parents, half the genes each, and no plant is both. */
export function crossFaults({ parents, sexes, plants }: Cross, at: Path): Refusal[] {
  const faults: Refusal[] = [];
  const roles = parents.map(({ role }) => role ?? "neither");
  if (parents.length !== 2 || !roles.includes("seed parent") || !roles.includes("pollen parent")) {
    const needed =
      "a cross has one lot of seed parents and one of pollen parents: put several on one side into a blend";
    faults.push(refusal("cross-sides", [...at, "parents"], roles.join(", "), "are the roles of its lots", needed));
  }
  parents.forEach(({ share }, index) => {
    if (share === undefined || Math.abs(share - 0.5) <= 1e-6) return;
    const needed = "in a cross each side gives half of the genes: 0.5";
    faults.push(refusal("cross-share", [...at, "parents", index, "share"], share, "is the share of a side", needed));
  });
  if (sexes !== "separate") {
    const needed = 'in a cross no seed parent is a pollen parent: "separate"';
    faults.push(refusal("cross-sexes", [...at, "sexes"], sexes ?? "hermaphrodite", "does not go with roles", needed));
  }
  if (plants !== undefined) {
    const needed = "leave it out: several harvests of one cross are one pool";
    faults.push(refusal("cross-plants", [...at, "plants"], plants, "does not go with roles", needed));
  }
  return faults;
}
