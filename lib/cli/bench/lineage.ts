import { lineage } from "@/lib/science/lineage/lineage";
import type { LineageLot } from "@/lib/science/lineage/lots";
import type { BenchRow } from "./rows";

/** 20,000 lots in one tree, each from one or two earlier ones, with 1,000 pairs. */
export async function benchLineage(): Promise<BenchRow[]> {
  const lots: LineageLot[] = Array.from({ length: 20_000 }, (_, i) => lotOf(i));
  const pairs = Array.from({ length: 1000 }, (_, i): [string, string] => [
    `L${(i * 7919) % 20_000}`,
    `L${(i * 104_729 + 13) % 20_000}`,
  ]);
  // The most that the process ever held: it only grows, so this has to run before everything else.
  const before = process.resourceUsage().maxRSS;
  const from = performance.now();
  const outcome = lineage({ lots, pairs });
  const took = performance.now() - from;
  const mebibytes = (process.resourceUsage().maxRSS - before) / 1024;
  if (!outcome.ok) throw new Error(outcome.refusals[0]?.sentence);
  return [
    {
      what: "lineage of 20,000 lots, 1,000 pairs",
      measured: `${took.toFixed(0)} ms, ${mebibytes.toFixed(0)} MiB more at most`,
      bound: "under 1 s and 300 MiB",
      within: took < 1000 && mebibytes < 300,
    },
  ];
}

function lotOf(i: number): LineageLot {
  if (i < 8) return { id: `L${i}`, kind: "founder" };
  const parents =
    i % 3 === 0
      ? [
          { id: `L${i - 3}`, share: 0.7 },
          { id: `L${i - 4 - (i % 4)}`, share: 0.3 },
        ]
      : [{ id: `L${i - 2 - (i % 5)}`, share: 1 }];
  return { id: `L${i}`, kind: "grow-out", parents, pollenParents: 120, seedParents: 40 };
}
