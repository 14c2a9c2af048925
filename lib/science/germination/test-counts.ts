import { countFault, faultsAmong, faultsIn } from "@/lib/science/limits";
import { type Path, type Refusal, refusal } from "@/lib/science/outcome";

/** One replicate at its final count, in seeds. What was not told apart is left out and counts as 0. */
export interface ReplicateCounts {
  readonly sown: number;
  readonly normal: number;
  readonly abnormal?: number;
  readonly hard?: number;
  readonly fresh?: number;
  /** dead or mouldy */
  readonly dead?: number;
}

const KINDS = ["normal", "abnormal", "hard", "fresh", "dead"] as const;

/** Counts that cannot be: not whole, nothing sown, or more seeds in the kinds than were sown. */
export function replicateFaults(replicate: ReplicateCounts, at: Path): Refusal[] {
  const faults = [
    ...faultsAmong(countFault(at, "sown", replicate.sown, 1)),
    ...faultsIn(KINDS.map((kind) => countFault(at, kind, replicate[kind]))),
  ];
  return faults.length > 0 ? faults : pastSown(replicate, at);
}

function pastSown(replicate: ReplicateCounts, at: Path): Refusal[] {
  let counted = 0;
  for (const kind of KINDS) {
    counted += replicate[kind] ?? 0;
    if (counted > replicate.sown) {
      const wrong = `as ${kind} makes ${counted} seeds of ${replicate.sown} sown`;
      const needed = "the kinds together may not pass the seeds sown";
      return [refusal("more-than-sown", [...at, kind], replicate[kind], wrong, needed)];
    }
  }
  return [];
}
