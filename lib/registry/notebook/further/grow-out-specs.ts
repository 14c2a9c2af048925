import type { Transaction } from "@/lib/db";
import type { Fields } from "./cells";
import { day, type FurtherSpec, nameOf, oneOf } from "./spec";

const needed = { needed: true };

/** What a line of grow_outs.csv cannot say: further plots and the days on each, lots of whose shares nobody knows, and the sides of a cross. */
export const growOutFiles: readonly FurtherSpec[] = [
  {
    file: "grow_out_plots.csv",
    table: "GrowOutPlot",
    noun: "plot of a grow-out",
    identity: { by: "keyed", columns: 2 },
    inOrderOf: 1,
    columns: [nameOf("grow-out", needed), nameOf("plot", needed), day("from_on"), day("to_on")],
  },
  {
    file: "grow_out_parents.csv",
    table: "GrowOutParent",
    noun: "lot sown with an unknown share",
    identity: { by: "keyed", columns: 2 },
    inOrderOf: 1,
    where: { share: null },
    columns: [nameOf("grow-out", needed), nameOf("lot", needed)],
    completes: parentsOfLines,
    clears: ["share"],
  },
  {
    file: "crosses.csv",
    table: "GrowOutParent",
    noun: "lot of a cross",
    identity: { by: "keyed", columns: 2 },
    inOrderOf: 1,
    where: { role: { not: null } },
    columns: [
      nameOf("grow-out", needed),
      nameOf("lot", needed),
      oneOf("role", ["seed parent", "pollen parent"], needed),
    ],
    completes: parentsOfLines,
  },
];

/** The parents that grow_outs.csv has made with a share that only stands in. */
async function parentsOfLines(tx: Transaction, rows: readonly Fields[]): Promise<ReadonlyMap<number, string>> {
  const standing = new Map<number, string>();
  for (const [place, { growOutId, lotId }] of rows.entries()) {
    const where = { growOutId_lotId: { growOutId: String(growOutId), lotId: String(lotId) } };
    const parent = await tx.growOutParent.findUnique({ where, select: { id: true } });
    if (parent) standing.set(place, parent.id);
  }
  return standing;
}
