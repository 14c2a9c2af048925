import type { NeighbourVerdict } from "./neighbour-verdict";

/** What may be claimed of seed that was harvested. */
export const isolationGrades = ["controlled", "isolated", "partly", "open", "unknown"] as const;
export type IsolationGrade = (typeof isolationGrades)[number];

export const isolationMethods = ["distance", "time", "barrier", "cage", "bags", "hand pollination"] as const;
export type IsolationMethodName = (typeof isolationMethods)[number];

/** How something is known. */
export const evidenceWords = ["seen", "told", "assumed"] as const;

/** A method that was used, and how that is known: seen, told, assumed, other words, or null for not written. */
export interface MethodUsed {
  readonly method: string;
  readonly evidence: string | null;
}

export type GradeReason =
  | "clonal"
  | "kept-apart"
  | "kept-apart-by-assumption"
  | "nobody-looked"
  | "too-close"
  | "not-assessed"
  | "marginal"
  | "all-far"
  | "none-found";

export interface GradeFacts {
  readonly clonal: boolean;
  /** somebody looked for neighbours, and the day is on record */
  readonly looked: boolean;
  readonly verdicts: readonly NeighbourVerdict[];
  readonly methods: readonly MethodUsed[];
}

export interface GradeOfLot {
  /** null for a crop kept by division: there is nothing to claim */
  readonly grade: IsolationGrade | null;
  readonly reasons: readonly GradeReason[];
}

const shutOut: readonly string[] = ["cage", "bags", "hand pollination"];

/**
 * The isolation grade that a lot harvested from a grow-out may claim. Foreign pollen shut out by cage, bags or hand pollination, and not
 * only by assumption: controlled. Else a source too close: open. Else, where nobody looked or a source could not be judged: unknown,
 * never isolated. Else one that is marginal: partly; none: isolated. A method assumed alone does not shut anything out.
 */
export function isolationGrade({ clonal, looked, verdicts, methods }: GradeFacts): GradeOfLot {
  if (clonal) return { grade: null, reasons: ["clonal"] };
  const apart = methods.filter(({ method }) => shutOut.includes(method));
  const sure = apart.some(({ evidence }) => evidence !== null && evidence !== "assumed");
  const beside = verdictReasons(looked, verdicts);
  if (sure) return { grade: "controlled", reasons: ["kept-apart", ...beside] };
  const reasons: GradeReason[] = apart.length > 0 ? [...beside, "kept-apart-by-assumption"] : beside;
  if (beside.includes("too-close")) return { grade: "open", reasons };
  if (!looked || beside.includes("not-assessed")) return { grade: "unknown", reasons };
  return { grade: beside.includes("marginal") ? "partly" : "isolated", reasons };
}

function verdictReasons(looked: boolean, verdicts: readonly NeighbourVerdict[]): GradeReason[] {
  const reasons: GradeReason[] = [];
  if (verdicts.includes("too-close")) reasons.push("too-close");
  if (!looked) reasons.push("nobody-looked");
  if (verdicts.includes("not-assessed")) reasons.push("not-assessed");
  if (verdicts.includes("marginal")) reasons.push("marginal");
  if (looked && reasons.length === 0) reasons.push(verdicts.length === 0 ? "none-found" : "all-far");
  return reasons;
}
