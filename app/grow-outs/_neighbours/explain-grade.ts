import { dateInWords } from "@/lib/display/dates";
import type { Explanation } from "@/lib/display/explanation";
import { distance, type UnitSettings } from "@/lib/display/units";
import { sourcesOfField } from "@/lib/registry/crops/source-marks";
import type { AssessedNeighbour, Assessment } from "@/lib/registry/neighbours/assess-neighbours";
import type { GroundOfNeighbours, NeighboursRead } from "@/lib/registry/neighbours/read-neighbours";
import { gradeFigure } from "./grade-words";
import { distancesWords, overlapWords, purposeNames, reasonWords, verdictNames, windowWords } from "./verdict-words";

/** How the grade came about. */
export function gradeExplanation(read: NeighboursRead, assessment: Assessment, units: UnitSettings): Explanation {
  const { ground, methods } = read;
  const { reasons } = assessment.grade;
  return {
    title: `Isolation of the seed of ${ground.name}`,
    answer: gradeFigure(assessment),
    formula:
      "controlled, where cage, bags or hand pollination shut pollen out, seen or told; else open by one source too close; " +
      "else not assessed, where nobody looked or one source could not be judged; else partly isolated by one that is marginal; else isolated",
    inputs: [
      {
        name: "last looked for neighbours",
        value: ground.neighboursLookedOn === null ? "nobody wrote it" : dateInWords(ground.neighboursLookedOn),
      },
      ruleInput(assessment, ground, units),
      ...assessment.neighbours.map((each, index) => ({
        name: `source ${index + 1}`,
        value: `${verdictNames[each.verdict]}${each.neighbour.distanceMetres === null ? "" : `, ${distance(each.neighbour.distanceMetres, units)}`}`,
      })),
      ...methods.map(({ method, evidence }) => ({
        name: `method: ${method}`,
        value: evidence ?? "nobody wrote how it is known",
      })),
    ],
    assumed: reasons.includes("kept-apart-by-assumption")
      ? ["A method that shuts pollen out is written as assumed; it was not counted."]
      : [],
    unsure:
      "A grade with reasons, no pass mark: large fields reach farther, many plants of one’s own and a wood between shorten the way. " +
      "Volunteers, bolters and wild kin are overlooked most. This is no certification; local rules may ask for more.",
    sources: sourcesOfRule(ground),
    plain: "rule of distance",
  };
}

/** How the verdict on one neighbour came about. */
export function verdictExplanation(
  each: AssessedNeighbour,
  assessment: Assessment,
  ground: GroundOfNeighbours,
  units: UnitSettings,
): Explanation {
  const { neighbour, crossing, overlap } = each;
  const pair = crossing?.pair ?? null;
  return {
    title: `Verdict on ${neighbour.what}`,
    answer: verdictNames[each.verdict],
    formula:
      "what crosses fully or in part: nearer than the inner distance too close, from there marginal, from the outer distance ok; " +
      "ok at any distance where the flowering was seen to lie apart on both sides",
    inputs: [
      { name: "distance, edge to edge", value: distance(neighbour.distanceMetres, units) },
      ruleInput(assessment, ground, units),
      { name: "its crop", value: neighbour.cropName ?? "not named" },
      { name: "crosses", value: crossingWords(each) },
      ...(pair?.evidence ? [{ name: "the list says", value: pair.evidence }] : []),
      ...(pair?.direction ? [{ name: "which way", value: pair.direction }] : []),
      { name: "it flowers", value: windowWords(each.window) },
      { name: "ours receives pollen", value: windowWords(assessment.stigma) },
      { name: "days in common", value: overlapWords(overlap, assessment.receptive) },
    ],
    assumed: [
      ...(each.window?.by === "told" && overlap !== null
        ? ["Its flowering is as it was told, not as it was seen."]
        : []),
      ...(crossing?.by === "same-group" ? ["Both are of one crossing group: they were taken to cross fully."] : []),
      ...(each.reasons.includes("crosses-in-part")
        ? ["What crosses in part is judged by the same distances as what crosses fully."]
        : []),
    ],
    unsure: reasonWords(each, assessment, ground, units).join("; "),
    sources: [
      ...sourcesOfRule(ground),
      ...(pair ? [`crossing list: ${[pair.sources, pair.verified].filter(Boolean).join(", ")}`] : []),
    ],
    plain: "rule of distance",
  };
}

function ruleInput({ distances, purpose }: Assessment, ground: GroundOfNeighbours, units: UnitSettings) {
  const name = `distances ${purposeNames[purpose]}`;
  const href = `/crops/${encodeURIComponent(ground.cropKey)}`;
  if (distances === null) return { name, value: "not known", href };
  const from = distances.from === "variety" ? " (the outer one as wanted for the variety)" : "";
  return { name, value: `${distancesWords(distances, units)}${from}`, href };
}

function crossingWords({ crossing, verdict }: AssessedNeighbour): string {
  if (verdict === "same-variety") return "it is the same variety";
  if (crossing === null) return "cannot be said";
  const words = {
    full: "fully",
    partial: "in part",
    rare: "hardly",
    none: "not",
    "none-known": "none known",
    unknown: "the list does not say",
  }[crossing.degree];
  return crossing.factor === null ? words : `${words} (factor ${crossing.factor}, an order of magnitude)`;
}

function sourcesOfRule(ground: GroundOfNeighbours): string[] {
  const cited = sourcesOfField(ground.sources, "isolationStewardMinM").map(
    ({ citation, mark }) => `${citation} (${mark})`,
  );
  return cited.length > 0 ? cited : ["distances of one’s own, or without a source on record"];
}
