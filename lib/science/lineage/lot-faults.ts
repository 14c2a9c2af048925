import { plotParentsFaults } from "@/lib/science/effective-size/plot-parents-faults";
import { faultsAmong, faultsIn, shareFault } from "@/lib/science/limits";
import { crossFaults } from "@/lib/science/lineage/cross-faults";
import { isCross, type LineageLot, type ParentShare, parentsOf } from "@/lib/science/lineage/lots";
import { type Path, type Refusal, refusal } from "@/lib/science/outcome";

/** Parents' shares may miss the sum of 1 by this much and are then scaled to it. */
const SHARE_SUM_TOLERANCE = 1e-6;

/** Room for rounding in a comparison: six-digit shares that miss by exactly 1e-6 still pass. */
const ROUNDING = 1e-12;

/** What is wrong with one lot, apart from who its parents are. */
export function lotFaults(lot: LineageLot, at: Path): Refusal[] {
  if (lot.kind === "founder") return founderFaults(lot.inbreeding ?? 0, lot.coancestry, at);
  const faults = shareFaults(lot.kind, parentsOf(lot), at);
  if (lot.kind !== "grow-out") return faults;
  if (isCross(lot)) faults.push(...crossFaults(lot, at));
  faults.push(...plotParentsFaults(lot, at), ...faultsAmong(shareFault(at, "foreignPollen", lot.foreignPollen)));
  return faults;
}

function founderFaults(inbreeding: number, coancestry: number | undefined, at: Path): Refusal[] {
  const faults = faultsAmong(shareFault(at, "inbreeding", inbreeding), shareFault(at, "coancestry", coancestry));
  const most = (1 + inbreeding) / 2;
  if (faults.length === 0 && coancestry !== undefined && coancestry > most + ROUNDING) {
    const needed = `two seeds are never more alike than one plant is with itself: at most ${most} at this inbreeding`;
    faults.push(
      refusal(
        "coancestry-too-high",
        [...at, "coancestry"],
        coancestry,
        "cannot be the coancestry inside a founder",
        needed,
      ),
    );
  }
  return faults;
}

function shareFaults(kind: LineageLot["kind"], parents: readonly ParentShare[], lotAt: Path): Refusal[] {
  // Thousands of lots have nothing wrong: places are only written where something is.
  const at = () => [...lotAt, "parents"];
  if (kind === "split" && parents.length !== 1) {
    const needed = "a split comes from one lot: name that lot with share 1";
    return [refusal("split-of-many", at(), parents.length, "parents stand here", needed)];
  }
  if (parents.some(({ share }) => shareFault([], "share", share)))
    return faultsIn(parents.map(({ share }, index) => shareFault([...at(), index], "share", share)));
  const sum = parents.reduce((total, { share }) => total + share, 0);
  if (Math.abs(sum - 1) <= SHARE_SUM_TOLERANCE + ROUNDING) return [];
  return [refusal("shares-not-one", at(), sum, "is the sum of the parents' shares", "they must sum to 1")];
}
