import type { Explanation } from "@/lib/display/explanation";
import { foreignShare, foreignShareSpan } from "@/lib/display/foreign-share";
import { plainNumber } from "@/lib/display/numbers";
import { ownValuesInWords } from "@/lib/display/own-values";
import { distance, type UnitSettings } from "@/lib/display/units";
import type { NeighboursRead } from "@/lib/registry/neighbours/read-neighbours";
import type { PollenKernel } from "@/lib/science/isolation/pollen-kernel";
import type { ShareOfNeighbours } from "@/lib/science/isolation/share-of-neighbours";
import type { Refusal } from "@/lib/science/outcome";

/** Why no share is given, and what would be needed. */
export function noShareSentence(refusal: Refusal | undefined): string {
  switch (refusal?.code) {
    case "no-model":
      return "No share of foreign pollen is given: for this crop no measured curve is known. The distance rule stands alone.";
    case "no-sources":
      return "No share of foreign pollen is given: no source that crosses is on record.";
    case "nobody-looked":
      return "No share of foreign pollen is given while nobody looked: an unknown neighbourhood is not an empty one.";
    case "not-assessed":
      return "No share of foreign pollen is given: of a source nobody can say whether it crosses.";
    case "distance":
      return "No share of foreign pollen is given: of a source the distance is not written.";
    case "size":
      return "No share of foreign pollen is given: of a source the size is not written.";
    case "plot-size":
      return "No share of foreign pollen is given: the plot’s area is not written.";
    case "beyond-data":
      return "No share of foreign pollen is given: a source lies far beyond what was measured for this crop. The distance rule stands alone.";
    default:
      return `No share of foreign pollen is given: ${refusal?.sentence ?? "too little is known"}.`;
  }
}

/** The share as a figure: "about 0.045 %", "below 0.01 %". */
export function shareFigure({ risk }: ShareOfNeighbours): string {
  const figure = foreignShare(risk.foreignShare);
  return figure.startsWith("below") ? figure : `about ${figure}`;
}

/** What the share means, by bands of purity that seed rules use for other crops: one in a thousand, careful, ordinary, visible. */
export function shareSentence({ risk, model }: ShareOfNeighbours): string {
  // A measured curve counts seeds, a kernel pollen.
  const of = model.form === "plane" ? "of the pollen" : "of the seed";
  const [middle, high] = [bandOf(risk.foreignShare), bandOf(risk.range.high)];
  return middle === high
    ? `${of}, plausibly ${foreignShareSpan(risk.range.low, risk.range.high)}: ${middle}. The distance rule decides.`
    : `${of}, plausibly ${foreignShareSpan(risk.range.low, risk.range.high)}: ${middle} by its middle, ${high} by its upper end. The distance rule decides.`;
}

function bandOf(share: number): string {
  if (share <= 0.001) return "about one seed in a thousand or fewer";
  if (share <= 0.0025) return "what careful keeping reaches";
  return share <= 0.01 ? "what ordinary keeping reaches" : "crosses are likely to be seen";
}

/** The numbers of the kernel of which the formula is written out. */
function kernelInWords(kernel: PollenKernel): string {
  return kernel.model === "2dt" ? `, a ${plainNumber(kernel.a, 4)} m, b ${plainNumber(kernel.b, 4)}` : "";
}

/** How the share came about. */
export function shareExplanation(read: NeighboursRead, share: ShareOfNeighbours, units: UnitSettings): Explanation {
  const { model, risk, input } = share;
  const numberOf = (id: string) => read.neighbours.findIndex((each) => each.id === id) + 1;
  const plot = read.plots.at(-1);
  return {
    title: `Foreign pollen in ${read.ground.name}`,
    answer: `${foreignShare(risk.foreignShare)}, ${foreignShareSpan(risk.range.low, risk.range.high)}`,
    formula:
      model.form === "plane"
        ? `share = Σ source / (own + Σ source) over the plane; source = synchrony · crossing factor · ∫ g over its square; g = (b − 1)/(π a²) · (1 + r²/a²)^(−b)${kernelInWords(model.kernel)}`
        : `share = Σ term / (1 + Σ term); term = P/(1 − P) · clamp(size/ours, 0.1, 10) · synchrony · crossing factor; P = min(${model.curve.cap}, ${model.curve.a} · d^${model.curve.b})`,
    inputs: [
      { name: "our plot", value: plot?.areaM2 ? `${plainNumber(plot.areaM2, 1)} m²` : "by plants" },
      ...risk.bySource.map(({ id, share: part }) => {
        const source = read.neighbours.find((each) => each.id === id);
        const given = input.sources.find((each) => each.id === id);
        const time = given ? `, in time ${plainNumber(given.overlap, 2)}, factor ${given.compatibility}` : "";
        return {
          name: `source ${numberOf(id)}, ${distance(source?.distanceMetres ?? null, units)}`,
          value: `${foreignShare(part)}${time}`,
        };
      }),
    ],
    assumed: [
      ...ownValuesInWords(model.own),
      model.form === "plane"
        ? "Plot and sources are squares of the areas written, face to face, on flat ground."
        : "One measured curve stands for all places.",
      ...(share.takenInTime.length > 0
        ? [
            `Taken to flower fully with ours, for the days are not known: source ${share.takenInTime.map(numberOf).join(", ")}.`,
          ]
        : []),
      ...(share.beyondData.length > 0
        ? [
            `Beyond the distances that were measured (to ${model.beyondMetres} m): source ${share.beyondData.map(numberOf).join(", ")}.`,
          ]
        : []),
    ],
    unsure: `The range is ${model.form === "plane" ? "five" : "ten"} times either way, a judgement from models against fields: no hedge, hive, storm or volunteer is in it, nor a source that nobody saw. The distance rule decides.`,
    sources: [model.source],
    calc: `echo '${JSON.stringify(input)}' | npm run --silent calc -- pollen-risk`,
  };
}
