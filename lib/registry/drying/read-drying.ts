import { type Database, readTogether, type Selection, sql } from "@/lib/db";
import type { RowOf } from "../change-set/records";
import { recordsOfLot } from "../lots/same-lot";

/** Moisture readings and dryings of a lot, those of its other records among them, each in the order of their days. */
export interface DryingRead {
  readonly readings: readonly RowOf<"MoistureReading">[];
  readonly dryings: readonly RowOf<"Drying">[];
}

/** One statement. */
export async function readDrying(db: Database, lotId: string): Promise<DryingRead> {
  return readTogether(db, { readings: readingsSelection(lotId), dryings: dryingsSelection(lotId) });
}

export function readingsSelection(lotId: string): Selection<RowOf<"MoistureReading">> {
  return {
    columns: {
      ...{ id: "text", lotId: "text", on: "text", onFirst: "text", onLast: "text", method: "text", note: "text" },
      ...{ percent: "number", relativeHumidityPercent: "number", temperatureC: "number" },
    },
    rows: sql`SELECT m.* FROM "MoistureReading" m WHERE m."lotId" IN ${recordsOfLot(lotId)} ORDER BY m."onFirst", m."id"`,
  };
}

export function dryingsSelection(lotId: string): Selection<RowOf<"Drying">> {
  return {
    columns: {
      ...{ id: "text", lotId: "text", on: "text", onFirst: "text", onLast: "text", note: "text" },
      ...{ startGrams: "number", startPercent: "number", targetPercent: "number", endGrams: "number", days: "number" },
    },
    rows: sql`SELECT d.* FROM "Drying" d WHERE d."lotId" IN ${recordsOfLot(lotId)} ORDER BY d."onFirst", d."id"`,
  };
}
