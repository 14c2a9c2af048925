import { uuidv7 } from "uuidv7";
import type { TableName } from "@/lib/registry/change-set/records";

interface Ground {
  readonly varietyId: string;
  readonly cropId: string;
  readonly growOutId: string;
  readonly plotId: string;
  readonly stewardId: string;
}

/** A neighbour of a grow-out and a stand beside a plot, alike in words, each with its flowering; and a method used. */
export async function fillNeighbours(
  put: (table: TableName, row: object) => Promise<unknown>,
  { varietyId, cropId, growOutId, plotId, stewardId }: Ground,
): Promise<void> {
  const on = { on: "1991~", onFirst: "1991-01-01", onLast: "1991-12-31" };
  const [neighbourId, wild] = [uuidv7(), uuidv7()];
  const size = { distanceMetres: 80, bearing: "NW", sizeM2: 20, plants: 7 };
  const window = { windowFirst: "2020-06-01", windowLast: "2020-06-20" };
  const what = { what: "wild oat", howSure: "seen", note: "n" };
  await put("NeighbourSource", { id: neighbourId, growOutId, plotId, cropId, varietyId, ...what, ...size, ...window });
  await put("FloweringNote", { neighbourId, organ: "flower", moment: "first", ...on, stewardId, note: "n" });
  await put("NeighbourSource", { id: wild, plotId, what: "wild oat" });
  await put("FloweringNote", { neighbourId: wild, organ: "pollen", moment: "last", ...on });
  const days = { fromOn: "2020-06-01", toOn: "2020-07-01" };
  await put("IsolationMethod", { growOutId, method: "bags", evidence: "seen", ...days, note: "n" });
}
