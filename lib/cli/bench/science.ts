import { readFileSync } from "node:fs";
import { Readable, Writable } from "node:stream";
import { calculationNamed, calculations } from "@/lib/schemas/calculations";
import { runCalc } from "../calc-run";
import type { BenchRow } from "./rows";
import { median } from "./rows";

/** Closed forms: 10,000 lines through `calc` may take this long, in seconds. What integrates or searches is printed beside them. */
const mostSeconds = 5;
const lines = 10_000;

const closedForms = new Set([
  "effective-size",
  "allele-capture",
  "population-plan",
  "germination-compare",
  "germination-speed",
  "seed-moisture",
  "viability",
  "off-types",
  "off-type-frequency",
  "off-type-trend",
  "reserve",
  "realised-heritability",
  "scorer-agreement",
  "dry-to",
  "thousand-seed-weight",
]);

/** The median of single calculations: each of a run of inputs that differ, after the first of them have warmed the code up. */
export function benchSingle(): BenchRow[] {
  const forecast = (i: number) => ({
    tests: [1, 3, 5, 8].map((years) => ({ years, sown: 50, normal: 46 - years - (i % 5) })),
    prior: { Ki: { mean: 1.65, sd: 0.5 }, lnSigmaYears: { mean: 1.6 + (i % 7) / 10, sd: 0.8 } },
    threshold: 0.7,
  });
  return [
    single("germination-test", 1.5, 400, (i) => ({
      replicates: [0, 1, 2, 3].map((k) => ({ sown: 100, normal: 70 + ((i * 7 + k * 3) % 25) })),
      standard: 0.75,
    })),
    single("sowing-count", 1.5, 400, (i) => ({
      test: { sown: 50 + (i % 50), normal: 30 + (i % 20) },
      emergence: 0.8,
      plantsWanted: 40 + (i % 60),
    })),
    single("pollen-risk", 5, 200, twentySources, "of 20 sources"),
    single("viability-forecast", 20, 60, forecast, "of 4 tests"),
    single("blend-advice", null, 60, thirtyLots, "of 30 lots"),
    single("gene-drop", null, 10, geneDropOf, "of 40 plants, 1,000 runs"),
  ];
}

function single(name: string, most: number | null, runs: number, input: (i: number) => object, of = ""): BenchRow {
  const times: number[] = [];
  for (let i = 0; i < runs; i += 1) {
    const given = input(i);
    const from = performance.now();
    const outcome = calculationNamed(name)?.run(given);
    const took = performance.now() - from;
    if (!outcome?.ok) throw new Error(`${name}: ${outcome?.refusals[0]?.sentence}`);
    if (i >= runs / 4) times.push(took);
  }
  const took = median(times);
  return {
    what: `one ${name}${of ? ` ${of}` : ""}`,
    measured: `${took.toFixed(2)} ms`,
    bound: most === null ? "shown" : `median under ${most} ms`,
    within: most === null || took < most,
  };
}

function twentySources(i: number) {
  return {
    form: "plane",
    kernel: { model: "2dt", a: 1.55, b: 1.45 },
    plot: { x: 0, y: 0, width: 20 + (i % 5), height: 20 },
    sources: Array.from({ length: 20 }, (_, k) => ({
      id: `source ${k}`,
      x: 40 + k * 35,
      y: (k % 4) * 30 - 40,
      width: 30,
      height: 30,
      overlap: 1 - k / 40,
      compatibility: 1,
    })),
  };
}

function thirtyLots(i: number) {
  const founders = Array.from({ length: 5 }, (_, k) => ({ id: `F${k}`, kind: "founder", inbreeding: k / 10 }));
  const grown = Array.from({ length: 30 }, (_, k) => ({
    id: `L${k}`,
    kind: "grow-out",
    parents: [{ id: `F${(k + i) % 5}`, share: 1 }],
    pollenParents: 20 + k,
    seedParents: 5 + (k % 9),
  }));
  return { lots: [...founders, ...grown], candidates: grown.map(({ id }) => id) };
}

function geneDropOf(i: number) {
  const lots = [
    { id: "old", kind: "founder" },
    { id: "new", kind: "grow-out", parents: [{ id: "old", share: 1 }], pollenParents: 40, seedParents: 12 },
  ];
  return { lots, replicates: 1000, seed: i };
}

/** A thousand choices among 200 plants a line, each through `calc` as JSON. */
export async function benchChoosing(): Promise<BenchRow[]> {
  const plants = (line: number) =>
    Array.from({ length: 200 }, (_, i) => ({
      id: `plant ${i + 1}`,
      cell: `${i % 10}`,
      scores: { ear: (i * 7 + line) % 9, height: (i * 13 + line) % 40, lodging: (i + line) % 5 },
    }));
  const traits = [
    { key: "ear", weight: 2, better: "higher" },
    { key: "height", weight: 1, better: { target: 20 } },
    { key: "lodging", weight: 1, better: "lower" },
  ];
  const input = Array.from({ length: 1000 }, (_, line) => JSON.stringify({ plants: plants(line), traits, keep: 20 }));
  const took = await secondsThroughCalc("choose-plants", input);
  return [
    {
      what: "1,000 choose-plants of 200 plants a line",
      measured: `${took.toFixed(2)} s`,
      bound: `under ${mostSeconds} s`,
      within: took < mostSeconds,
    },
  ];
}

/** Ten thousand lines of each closed form of which another program's references are kept, its three hundred inputs again and again. */
export async function benchLines(): Promise<BenchRow[]> {
  const rows: BenchRow[] = [];
  for (const { name } of calculations) {
    const inputs = referenceInputs(name);
    if (inputs.length === 0) continue;
    const closed = closedForms.has(name);
    const many = closed ? lines : 300;
    const input = Array.from({ length: many }, (_, i) => inputs[i % inputs.length] ?? "");
    const took = await secondsThroughCalc(name, input);
    rows.push({
      what: `${many.toLocaleString("en")} lines of ${name}`,
      measured: `${took.toFixed(2)} s`,
      bound: closed ? `under ${mostSeconds} s` : "integrates or searches: shown",
      within: !closed || took < mostSeconds,
    });
  }
  return rows;
}

function referenceInputs(name: string): string[] {
  try {
    const { cases } = JSON.parse(readFileSync(`tests/reference/${name}.json`, "utf8")) as {
      cases: { input: object }[];
    };
    return cases.map(({ input }) => JSON.stringify(input));
  } catch {
    return [];
  }
}

async function secondsThroughCalc(name: string, input: readonly string[]): Promise<number> {
  const nowhere = () => new Writable({ write: (_chunk, _encoding, done) => done() });
  const from = performance.now();
  await runCalc([name], { input: Readable.from([`${input.join("\n")}\n`]), output: nowhere(), errors: nowhere() });
  return (performance.now() - from) / 1000;
}
