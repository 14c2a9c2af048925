import { cvOf, isCv, listed, type PlotParents, type Shares } from "@/lib/science/effective-size/plot-parents";
import { countFault, type Fault, faultsIn, notNegativeFault, shareFault } from "@/lib/science/limits";
import { type Path, type Refusal, refusal } from "@/lib/science/outcome";
import { ROUNDING_SLACK } from "@/lib/science/whole-steps";

/** Everything about the parents of one grow-out that cannot be, each with its place under `at`. */
export function plotParentsFaults(plot: PlotParents, at: Path = []): Refusal[] {
  // Thousands of grow-outs are looked at for one page, and nearly all are sound: one list, which stays empty.
  const faults: Refusal[] = [];
  add(faults, countFault(at, "pollenParents", plot.pollenParents, 1));
  add(faults, countFault(at, "seedParents", plot.seedParents, 1));
  add(faults, shareFault(at, "selfingRate", plot.selfingRate));
  if (faults.length > 0) return faults;
  addTogether(faults, plot, at);
  addShares(faults, plot.seedShares, plot.seedParents, at, "seedShares");
  addShares(faults, plot.pollenShares, plot.pollenParents, at, "pollenShares");
  add(faults, fatherlessFault(plot, at));
  return faults;
}

function add(faults: Refusal[], fault: Fault): void {
  if (fault) faults.push(fault);
}

function addTogether(faults: Refusal[], plot: PlotParents, at: Path): void {
  const { pollenParents, seedParents, selfingRate, selfIncompatible } = plot;
  const separate = plot.sexes === "separate";
  if (!separate && seedParents > pollenParents) {
    const wrong = `seed parents are more than the ${pollenParents} that shed pollen`;
    const needed = "every seed parent of a hermaphrodite crop is among the pollen parents: count it there too";
    faults.push(refusal("more-seed-than-pollen-parents", [...at, "seedParents"], seedParents, wrong, needed));
  }
  const cannotSelf = "cannot be the selfing rate here";
  if (separate && (selfingRate ?? 0) > 0) {
    const needed = "where the sexes are separate no plant selfs: leave it out or write 0";
    faults.push(refusal("selfing-impossible", [...at, "selfingRate"], selfingRate, cannotSelf, needed));
  }
  if (selfIncompatible !== true) return;
  const selfing = [...at, "selfIncompatible"];
  if (separate) {
    const needed = "separate sexes rule out selfing already: leave selfIncompatible out";
    faults.push(refusal("self-incompatible-sexes", selfing, true, "does not go with separate sexes", needed));
  } else if (pollenParents === 1) {
    const needed = "a plant that cannot self sets no seed alone: at least 2 pollen parents";
    faults.push(refusal("no-father", selfing, true, "does not go with a single pollen parent", needed));
  }
  if (!separate && (selfingRate ?? 0) > 0) {
    const needed = "a self-incompatible crop has a selfing rate of 0: leave one of the two out";
    faults.push(refusal("selfing-impossible", [...at, "selfingRate"], selfingRate, cannotSelf, needed));
  }
}

function addShares(
  faults: Refusal[],
  shares: Shares | undefined,
  plants: number,
  plotAt: Path,
  key: "seedShares" | "pollenShares",
): void {
  if (shares === undefined || shares === "equal") return;
  const at = [...plotAt, key];
  const whose = key === "seedShares" ? "seed parents" : "pollen parents";
  if (isCv(shares)) {
    const fault = notNegativeFault(at, "cv", shares.cv);
    add(faults, fault);
    if (fault || shares.cv ** 2 <= (plants - 1) * (1 + ROUNDING_SLACK)) return;
    const needed = `at most ${Math.sqrt(plants - 1)}, the square root of ${plants} - 1, where one plant gave everything`;
    const wrong = `is more than ${plants} ${whose} can differ`;
    faults.push(refusal("cv-impossible", [...at, "cv"], shares.cv, wrong, needed));
    return;
  }
  if (shares.length !== plants) {
    const needed = `one number for each of the ${plants} ${whose}`;
    faults.push(refusal("shares-miscounted", at, shares.length, "numbers stand here", needed));
    return;
  }
  const ofEach = faultsIn(shares.map((share, index) => notNegativeFault(at, index, share)));
  for (const fault of ofEach) faults.push(fault);
  if (ofEach.length === 0 && shares.every((share) => share === 0)) {
    const needed = `at least one of the ${whose} with a share above 0`;
    faults.push(refusal("shares-all-zero", at, 0, "is every share", needed));
  }
}

/** A seed parent that sheds all the pollen there is and cannot self has no father for its own seed. */
function fatherlessFault(plot: PlotParents, at: Path): Fault {
  const pollen = listed(plot.pollenShares);
  if (plot.selfIncompatible !== true || !pollen || pollen.length !== plot.pollenParents) return undefined;
  if (pollen.filter((share) => share > 0).length !== 1) return undefined;
  const lone = pollen.findIndex((share) => share > 0);
  const seed = listed(plot.seedShares);
  const givesSeed = lone < plot.seedParents && (seed ? (seed[lone] ?? 0) > 0 : true);
  if (!givesSeed || cvOf(plot.seedShares) > 0) return undefined;
  const needed = "a self-incompatible seed parent needs pollen from another plant";
  return refusal("no-father", [...at, "pollenShares"], "one plant", "sheds all the pollen and gives seed too", needed);
}
