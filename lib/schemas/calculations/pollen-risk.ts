import { z } from "zod";
import { calculation } from "@/lib/schemas/calculations/calculation";
import { assumedKey } from "@/lib/schemas/calculations/shared-keys";
import { pollenRisk } from "@/lib/science/isolation/pollen-risk";

const rectangle = { x: z.number(), y: z.number(), width: z.number(), height: z.number() };

const kernel = z.discriminatedUnion("model", [
  z.strictObject({ model: z.literal("2dt"), a: z.number(), b: z.number() }),
  z.strictObject({ model: z.literal("geometric"), b: z.number() }),
  z.strictObject({ model: z.literal("nig"), d: z.number(), l: z.number(), lz: z.number() }),
]);

const plane = z.strictObject({
  form: z.literal("plane"),
  kernel,
  plot: z.strictObject(rectangle),
  ownBorders: z.array(z.strictObject(rectangle)).optional(),
  sources: z.array(
    z.strictObject({
      id: z.string().min(1),
      ...rectangle,
      overlap: z.number(),
      compatibility: z.number(),
      shedding: z.number().optional(),
    }),
  ),
  points: z.int().optional(),
  uncertaintyFactor: z.number().optional(),
});

const odds = z.strictObject({
  form: z.literal("odds"),
  curve: z.union([
    z.strictObject({ a: z.number(), b: z.number(), cap: z.number() }),
    z.strictObject({ points: z.array(z.strictObject({ distanceMetres: z.number(), share: z.number() })) }),
  ]),
  plotSize: z.number(),
  sources: z.array(
    z.strictObject({
      id: z.string().min(1),
      distanceMetres: z.number(),
      size: z.number(),
      overlap: z.number(),
      compatibility: z.number(),
    }),
  ),
  uncertaintyFactor: z.number().optional(),
});

const shape = z.discriminatedUnion("form", [plane, odds]);

const RECTANGLE = "{x, y, width, height}, metres; x, y the lower left corner";

export const pollenRiskCalculation = calculation(
  {
    name: "pollen-risk",
    title: "The share of foreign pollen to expect in a plot",
    answers:
      "How much of the pollen that our plants meet comes from other plantings: for wind-pollinated maize by a kernel over the plane, for crops with a measured curve of distance by odds. With a wide range, which is the answer; the middle is only its middle.",
    whenToDoubt:
      "Always: no hedge, hive, storm, volunteer or slope is in it, and far tails are least known where stewards need them most. " +
      "A crop with neither a kernel nor a curve gets no number: the distance rule alone decides, and it decides in any case. " +
      "No source given is not the same as none there.",
    formula: [
      "plane: at points × points places, own = ∫ g over the plot and its borders, source = overlap·compatibility·shedding·∫ g over it",
      "share = Σ source / (own + Σ source), averaged over the places",
      "2dt: g = (b − 1)/(π a²) · (1 + r²/a²)^(−b);  geometric: g = (b + 1)(b + 2)/(2π) · (1 + r)^b",
      "nig: g = d² e^lz/(2π) · (q^(−1/2) + p^(1/2))/q · exp(−√(pq)) · I0(l d r),  q = 1 + d²r²,  p = lz² + l²",
      "odds: P(d) = min(cap, a·d^b), or log-log between points;  term = P/(1 − P) · clamp(size/plotSize, 0.1, 10) · overlap · compatibility",
      "share = Σ term / (1 + Σ term);  range = share/f to min(1, share·f)",
    ],
    symbols: [
      { symbol: "g(r)", meaning: "density per m² of one plant's pollen at r metres" },
      { symbol: "P(d)", meaning: "share of seed from a source of equal size at d metres" },
      { symbol: "f", meaning: "uncertainty factor: a judgement from models against field data" },
    ],
    source: [
      "Clark et al. 1999, Ecology 80:1475-1494 (2Dt); Klein et al. 2003, Ecol. Monogr. 73:131-150 (NIG); formulas checked, papers not read through",
      "Checked against Goggi et al. 2007, Int. J. Biometeorol. 51:493-503, and Viljoen & Chetty 2011, Environ. Sci. Eur. 23:8",
      "Odds form and factors 5 and 10: this registry's judgement",
    ],
    input: [
      { key: "form", shape: '"plane" or "odds"', meaning: "kernel over the plane, or a measured curve of distance" },
      {
        key: "kernel",
        shape: '{"model": "2dt", a, b} or {"model": "geometric", b} or {"model": "nig", d, l, lz}',
        meaning: "plane: where one plant's pollen lands; maize 2dt a 1.55 m, b 1.45",
      },
      { key: "plot", shape: RECTANGLE, meaning: "plane: our plot" },
      {
        key: "ownBorders",
        shape: `list of ${RECTANGLE}`,
        meaning: "plane: plantings of the same variety",
        usual: "none",
      },
      {
        key: "curve",
        shape: '{a, b, cap} or {"points": [{distanceMetres, share}]}',
        meaning: "odds: P(d), shares 0 to 1",
      },
      { key: "plotSize", shape: "above 0", meaning: "odds: our flowers, plants or area" },
      { key: "sources[].id", shape: "text", meaning: "a name of its own" },
      { key: "sources[].x, y, width, height", shape: "metres", meaning: "plane: where it stands" },
      { key: "sources[].distanceMetres", shape: "0 or more", meaning: "odds: from edge to edge" },
      { key: "sources[].size", shape: "above 0, in the unit of plotSize", meaning: "odds: how large it is" },
      {
        key: "sources[].overlap",
        shape: "0 to 1",
        meaning: "its pollen that is in time (synchrony of flowering-overlap)",
      },
      { key: "sources[].compatibility", shape: "0 to 1", meaning: "its pollen that makes seed on our plants" },
      { key: "sources[].shedding", shape: "0 to 1", meaning: "plane: 0 where detasselled or cut", usual: "1" },
      { key: "points", shape: "whole number, 1 to 30", meaning: "plane: places along each side", usual: "3" },
      {
        key: "uncertaintyFactor",
        shape: "1 or more",
        meaning: "f: how many times either way the share may be off",
        usual: "5 plane, 10 odds",
      },
    ],
    output: [
      {
        key: "foreignShare",
        shape: "0 to 1",
        meaning: "share of foreign pollen, or of seed where the curve counts seeds",
      },
      { key: "range", shape: "{low, high}, each 0 to 1", meaning: "where the true share may well lie" },
      { key: "bySource", shape: "list of {id, share}", meaning: "each source's part of it" },
      { key: "largest", shape: "id or null", meaning: "the source with the largest part" },
      assumedKey,
    ],
  },
  shape,
  {
    form: "odds",
    curve: { a: 0.1628, b: -0.6067, cap: 0.5 },
    plotSize: 30,
    sources: [{ id: "allotment", distanceMetres: 150, size: 60, overlap: 1, compatibility: 1 }],
  },
  pollenRisk,
);
