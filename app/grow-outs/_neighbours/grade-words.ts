import { dateInWords } from "@/lib/display/dates";
import { countedInWords, listed } from "@/lib/display/plurals";
import { distance, type UnitSettings } from "@/lib/display/units";
import type { Assessment } from "@/lib/registry/neighbours/assess-neighbours";
import type { NeighboursRead } from "@/lib/registry/neighbours/read-neighbours";
import type { GradeReason, IsolationGrade } from "@/lib/science/isolation/isolation-grade";
import { distancesWords, overlapWords, purposeNames } from "./verdict-words";

/** A grade as a figure at the head of a page. */
export const gradeNames: Readonly<Record<IsolationGrade, string>> = {
  controlled: "controlled",
  isolated: "isolated",
  partly: "partly isolated",
  open: "open",
  unknown: "not assessed",
};

/** The grade of an assessment as a figure. */
export function gradeFigure({ grade }: Assessment): string {
  return grade.grade === null ? "nothing to claim" : gradeNames[grade.grade];
}

/** Whether the grade waits for a hand: nobody looked, a source could not be judged, or one stands too close. */
export function gradeWaits({ grade }: Assessment): boolean {
  return grade.grade === "open" || grade.grade === "unknown";
}

/** The grade in sentences, for the head of the page; says what would make it known. */
export function gradeSentence(read: NeighboursRead, assessment: Assessment, units: UnitSettings): string {
  const { grade, reasons } = assessment.grade;
  const { ground, methods } = read;
  if (grade === null)
    return "The crop is kept by division: foreign pollen does not reach what is replanted. Only true seed would have to be isolated.";
  const said = reasons.map((reason) => reasonSentence(reason, read, assessment, units));
  const near = nearestSentence(assessment, units);
  const head = {
    controlled: `is what its lots may claim: ${listed(methodNames(methods))} kept other pollen off.`,
    isolated: "is what its lots may claim.",
    partly: "is what its lots may claim.",
    open: "is what its lots may claim: other pollen of its kind may have come in.",
    unknown: "",
  }[grade];
  const looked = ground.neighboursLookedOn;
  const look = looked === null || grade === "unknown" ? "" : `Last looked ${dateInWords(looked)}.`;
  return [head, ...said, near, look].filter(Boolean).join(" ");
}

function methodNames(methods: NeighboursRead["methods"]): string[] {
  return [...new Set(methods.map(({ method }) => method))].filter((method) =>
    ["cage", "bags", "hand pollination"].includes(method),
  );
}

function reasonSentence(
  reason: GradeReason,
  { neighbours }: NeighboursRead,
  { neighbours: assessed, distances, purpose }: Assessment,
  units: UnitSettings,
): string {
  const many = (verdict: string) => assessed.filter((each) => each.verdict === verdict).length;
  const rule =
    distances === null ? "" : ` by the distances ${purposeNames[purpose]} (${distancesWords(distances, units)})`;
  const sentences: Readonly<Record<GradeReason, () => string>> = {
    clonal: () => "",
    "kept-apart": () => "",
    "kept-apart-by-assumption": () => "A method that shuts pollen out is only assumed, and assuming shuts nothing out.",
    "nobody-looked": () =>
      neighbours.length === 0
        ? "Nobody wrote that they looked for neighbours. Not looked is not none found."
        : "Nobody wrote that they looked all round: there may be more than what is on record.",
    "too-close": () => `${sources(many("too-close"))} too close${rule}.`,
    "not-assessed": () =>
      `${capital(countedInWords(many("not-assessed"), "source"))} could not be judged: the list below says what is missing.`,
    marginal: () => `${sources(many("marginal"))} marginal${rule}.`,
    "all-far": () => `No source on record stands too near${rule}.`,
    "none-found": () => "Somebody looked and found no neighbour source.",
  };
  return sentences[reason]();
}

function sources(count: number): string {
  return `${capital(countedInWords(count, "source"))} ${count === 1 ? "is" : "are"}`;
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** The nearest pollen of its kind, in distance and days: the number that the trade asks for. Names no neighbour. */
export function nearestSentence({ nearest, receptive }: Assessment, units: UnitSettings): string {
  if (nearest === null) return "";
  const far = distance(nearest.neighbour.distanceMetres, units);
  const days = nearest.overlap === null ? "" : `, in flower together on ${overlapWords(nearest.overlap, receptive)}`;
  return `The nearest pollen that crosses stood ${far} off${days}.`;
}

/** What is proposed to be kept with the lots: the grade's reasons without a neighbour's name, side or crop. */
export function proposedReasons(read: NeighboursRead, assessment: Assessment, units: UnitSettings): string {
  const { grade, reasons } = assessment.grade;
  const { ground, methods } = read;
  const methodsUsed = [
    ...new Set(methods.map(({ method, evidence }) => (evidence ? `${method} (${evidence})` : method))),
  ];
  const looked = ground.neighboursLookedOn;
  const parts = [
    grade === "controlled" || methodsUsed.length > 0 ? `Methods: ${methodsUsed.join(", ")}.` : "",
    looked === null ? "Nobody wrote that they looked for neighbours." : `Looked for neighbours ${dateInWords(looked)}.`,
    ...reasons
      .filter((reason) => !["nobody-looked", "kept-apart", "clonal"].includes(reason))
      .map((reason) =>
        reasonSentence(reason, read, assessment, units).replace(": the list below says what is missing", ""),
      ),
    nearestSentence(assessment, units),
  ];
  return parts.filter(Boolean).join(" ");
}
