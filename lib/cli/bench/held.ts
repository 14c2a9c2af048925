import { figuresBeside } from "@/lib/registry/figures/figures-beside";
import type { AllRecords, GrowOutRecord, LotRecord } from "@/lib/registry/figures/records";
import { pageCalculations } from "@/lib/worker/long-calculations";
import type { BenchRow } from "./rows";

/** How long the figures of one crop's lots, all of one descent, keep the server from answering others; with a gap in every line the second time. */
export async function benchHeld(): Promise<BenchRow[]> {
  const rows: BenchRow[] = [];
  for (const [lots, gaps] of [
    [20_000, false],
    [2000, true],
  ] as const) {
    const records = recordsOf(lots, gaps);
    const { took, held } = await heldWhile(() => figuresBeside(records));
    rows.push({
      what: `figures of ${lots} lots of one crop${gaps ? " with gaps" : ""}`,
      measured: `${took.toFixed(0)} ms, the server held ${held.toFixed(0)} ms at most`,
      bound: "held under 50 ms",
      within: held < 50,
    });
  }
  pageCalculations().close();
  return rows;
}

/** The longest time between two turns of the process while something is worked out. */
async function heldWhile(work: () => Promise<unknown>): Promise<{ took: number; held: number }> {
  let held = 0;
  let going = true;
  let last = performance.now();
  const turn = () => {
    const now = performance.now();
    held = Math.max(held, now - last);
    last = now;
    if (going) setImmediate(turn);
  };
  setImmediate(turn);
  const from = performance.now();
  await work();
  going = false;
  return { took: performance.now() - from, held };
}

function recordsOf(many: number, gaps: boolean): AllRecords {
  const lots = Array.from({ length: many }, (_, i): LotRecord => {
    const founder = i < 8;
    return {
      ...{ id: `L${i}`, number: `Held ${i}`, varietyId: "v", holder: null, parents: [], inbreeding: 0 },
      ...{ kind: founder ? "founder" : "harvest", growOutId: founder ? null : `G${i}`, thousandSeedGrams: null },
      founderLines: "many",
    };
  });
  const growOuts = lots.slice(8).map((_, k): GrowOutRecord => {
    const i = k + 8;
    const seedParents = gaps && i % 50 === 9 ? null : 40;
    const two = [
      { id: `L${i - 3}`, share: 0.7 },
      { id: `L${i - 4 - (i % 4)}`, share: 0.3 },
    ];
    return {
      ...{ id: `G${i}`, name: `grown ${i}`, varietyId: "v", plantsStanding: 120, malesStanding: null, seedParents },
      ...{ roguedBeforePollen: 2, seedShares: "equal", selfingRate: 0, foreignPollen: 0 },
      parents: i % 3 === 0 ? two : [{ id: `L${i - 2 - (i % 5)}`, share: 1 }],
    };
  });
  const profile = {
    matingSystem: "outcrossing",
    selfIncompatible: "no",
    outcrossingPctMin: 90,
    outcrossingPctMax: 100,
  };
  return {
    varieties: [{ id: "v", name: "Held", profile, clonal: false }],
    ...{ lots, growOuts, ledger: new Map(), tests: new Map() },
  };
}
