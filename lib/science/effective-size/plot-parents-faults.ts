import { cvOf, isCv, listed, type PlotParents, type Shares } from "@/lib/science/effective-size/plot-parents";
import { countFault, type Fault, faultsAmong, faultsIn, notNegativeFault, shareFault } from "@/lib/science/limits";
import { type Path, type Refusal, refusal } from "@/lib/science/outcome";
import { ROUNDING_SLACK } from "@/lib/science/whole-steps";

/** Everything about the parents of one grow-out that cannot be, each with its place under `at`. */
export function plotParentsFaults(plot: PlotParents, at: Path = []): Refusal[] {
  const faults = faultsAmong(
    countFault(at, "pollenParents", plot.pollenParents, 1),
    countFault(at, "seedParents", plot.seedParents, 1),
    shareFault(at, "selfingRate", plot.selfingRate),
  );
  if (faults.length > 0) return faults;
  return [
    ...faultsAmong(...togetherFaults(plot, at)),
    ...sharesFaults(plot.seedShares, plot.seedParents, [...at, "seedShares"], "seed parents"),
    ...sharesFaults(plot.pollenShares, plot.pollenParents, [...at, "pollenShares"], "pollen parents"),
    ...faultsAmong(fatherlessFault(plot, at)),
  ];
}

function* togetherFaults(plot: PlotParents, at: Path): Generator<Fault> {
  const { pollenParents, seedParents, selfingRate, selfIncompatible } = plot;
  const separate = plot.sexes === "separate";
  if (!separate && seedParents > pollenParents) {
    const wrong = `seed parents are more than the ${pollenParents} that shed pollen`;
    const needed = "every seed parent of a hermaphrodite crop is among the pollen parents: count it there too";
    yield refusal("more-seed-than-pollen-parents", [...at, "seedParents"], seedParents, wrong, needed);
  }
  if (separate && (selfingRate ?? 0) > 0) {
    const needed = "where the sexes are separate no plant selfs: leave it out or write 0";
    yield refusal("selfing-impossible", [...at, "selfingRate"], selfingRate, "cannot be the selfing rate here", needed);
  }
  if (selfIncompatible !== true) return;
  if (separate) {
    const needed = "separate sexes rule out selfing already: leave selfIncompatible out";
    yield refusal(
      "self-incompatible-sexes",
      [...at, "selfIncompatible"],
      true,
      "does not go with separate sexes",
      needed,
    );
  } else if (pollenParents === 1) {
    const needed = "a plant that cannot self sets no seed alone: at least 2 pollen parents";
    yield refusal("no-father", [...at, "selfIncompatible"], true, "does not go with a single pollen parent", needed);
  }
  if (!separate && (selfingRate ?? 0) > 0) {
    const needed = "a self-incompatible crop has a selfing rate of 0: leave one of the two out";
    yield refusal("selfing-impossible", [...at, "selfingRate"], selfingRate, "cannot be the selfing rate here", needed);
  }
}

function sharesFaults(shares: Shares | undefined, plants: number, at: Path, whose: string): Refusal[] {
  if (isCv(shares)) {
    const fault = notNegativeFault(at, "cv", shares.cv);
    if (fault) return [fault];
    if (shares.cv ** 2 <= (plants - 1) * (1 + ROUNDING_SLACK)) return [];
    const needed = `at most ${Math.sqrt(plants - 1)}, the square root of ${plants} - 1, where one plant gave everything`;
    return [refusal("cv-impossible", [...at, "cv"], shares.cv, `is more than ${plants} ${whose} can differ`, needed)];
  }
  const list = listed(shares);
  if (!list) return [];
  if (list.length !== plants) {
    const needed = `one number for each of the ${plants} ${whose}`;
    return [refusal("shares-miscounted", at, list.length, "numbers stand here", needed)];
  }
  const faults = faultsIn(list.map((share, index) => notNegativeFault(at, index, share)));
  if (faults.length === 0 && list.every((share) => share === 0)) {
    const needed = `at least one of the ${whose} with a share above 0`;
    faults.push(refusal("shares-all-zero", at, 0, "is every share", needed));
  }
  return faults;
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
