import { calculationNamed } from "@/lib/schemas/calculations";
import { sizes, takesLong } from "@/lib/schemas/calculations/takes-long";
import { type BenchRow, median } from "./rows";

/** What is worked out where it is asked may hold nothing up for longer. */
const mostMilliseconds = 50;
const runs = 9;

const founders = [0, 1, 2].map((k) => ({ id: `F${k}`, kind: "founder", inbreeding: k / 4 }));
const grown = (count: number, pollenParents = 40) =>
  Array.from({ length: count }, (_, k) => ({
    id: `L${k}`,
    kind: "grow-out",
    parents: [{ id: k < 3 ? `F${k}` : `L${k - 1 - (k % 2)}`, share: 1 }],
    pollenParents,
    seedParents: 5 + (k % 9),
  }));
const each = <T>(count: number, make: (k: number) => T) => Array.from({ length: count }, (_, k) => make(k));

/** The largest input of each calculation that `takesLong` still calls quick. */
const edges: Readonly<Record<string, (most: number) => object>> = {
  "gene-drop": (most) => ({ lots: [...founders, ...grown(1, 45)], replicates: Math.floor(most / 50), seed: 1 }),
  "viability-forecast": (most) => ({
    tests: each(most, (k) => ({ years: 1 + k / 2, sown: 50, normal: 45 - k })),
    prior: { Ki: { mean: 1.65, sd: 0.5 }, lnSigmaYears: { mean: 1.6, sd: 0.8 } },
    threshold: 0.7,
  }),
  "choose-plants": (most) => ({
    plants: each(most / 5, (k) => ({
      id: `${k}`,
      cell: `${k % 10}`,
      scores: { a: k % 7, b: k % 11, c: k % 5, d: k % 3, e: k % 13 },
    })),
    traits: ["a", "b", "c", "d", "e"].map((key) => ({ key, weight: 1, better: "higher" })),
    keep: 20,
  }),
  "blend-advice": (most) => {
    const lots = grown(most);
    return { lots: [...founders, ...lots], candidates: lots.map(({ id }) => id) };
  },
  lineage: (most) => ({ lots: [...founders, ...grown(most - founders.length)] }),
  "germination-test": (most) => ({
    replicates: each(4, (k) => ({ sown: most / 4, normal: Math.floor(most / 5) + k })),
  }),
  "realised-heritability": (most) => ({
    cycles: each(most, (k) => ({ differential: 2, mean: 10 + k / 2 })),
    drift: { additiveVariance: 1, effectiveSize: 50, phenotypicVariance: 4, measured: each(most, () => 50) },
  }),
  "pollen-risk": (most) => ({
    form: "plane",
    kernel: { model: "2dt", a: 1.55, b: 1.45 },
    plot: { x: 0, y: 0, width: 20, height: 20 },
    sources: each(most, (k) => ({
      id: `${k}`,
      x: 40 + k * 35,
      y: 0,
      width: 30,
      height: 30,
      overlap: 1,
      compatibility: 1,
    })),
  }),
  "sowing-count": (most) => ({ test: { sown: 100, normal: 80 }, plantsWanted: most }),
};

/** How long the largest quick input of each calculation takes: what is larger goes to the thread. */
export function benchEdges(): BenchRow[] {
  return Object.entries(sizes).map(([name, { most }]) => {
    const input = edges[name]?.(most);
    if (!input || takesLong(name, input)) throw new Error(`${name}: no input at the edge of what is quick`);
    const times = each(runs, () => {
      const from = performance.now();
      const outcome = calculationNamed(name)?.run(input);
      if (!outcome?.ok) throw new Error(`${name}: ${outcome?.refusals[0]?.sentence}`);
      return performance.now() - from;
    });
    const took = median(times);
    return {
      what: `largest ${name} that is worked out at once`,
      measured: `${took.toFixed(1)} ms`,
      bound: `under ${mostMilliseconds} ms`,
      within: took < mostMilliseconds,
    };
  });
}
