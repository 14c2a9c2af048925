import { type Selection, type Sql, sql } from "@/lib/db";
import { sownInClusters } from "@/lib/science/crops/seed-clusters";
import { grouped } from "../change-set/grouped";
import { type CountOnRecord, type PassOnRecord, standingOf } from "../grow-outs/field-records";
import { mostStanding } from "../grow-outs/plants-in-bounds";

interface OfGrowOut {
  readonly growOutId: string;
}
type CountSql = OfGrowOut & Pick<CountOnRecord, "id" | "stage" | "plants" | "onFirst" | "onLast" | "replacesId">;
type PassSql = OfGrowOut &
  Pick<PassOnRecord, "id" | "timing" | "pulled" | "left" | "onFirst" | "onLast" | "replacesId">;

/** The counts and rogue passes of grow-outs of which nobody wrote what stood: they bound it. */
export function countedBefore(these: Sql): { counts: Selection<CountSql>; passes: Selection<PassSql> } {
  return {
    counts: {
      columns: {
        ...{ id: "text", growOutId: "text", stage: "text", plants: "number" },
        ...{ onFirst: "text", onLast: "text", replacesId: "text" },
      },
      rows: sql`
        SELECT k."id", k."growOutId", k."stage", k."plants", k."onFirst", k."onLast", k."replacesId" FROM "StageCount" k
        JOIN "GrowOut" g ON g."id" = k."growOutId" JOIN "Variety" v ON v."id" = g."varietyId"
        WHERE ${these} AND g."plantsStanding" IS NULL ORDER BY k."id"`,
    },
    passes: {
      columns: {
        ...{ id: "text", growOutId: "text", timing: "text", pulled: "number", left: "number" },
        ...{ onFirst: "text", onLast: "text", replacesId: "text" },
      },
      rows: sql`
        SELECT k."id", k."growOutId", k."timing", k."pulled", k."left", k."onFirst", k."onLast", k."replacesId" FROM "RoguePass" k
        JOIN "GrowOut" g ON g."id" = k."growOutId" JOIN "Variety" v ON v."id" = g."varietyId"
        WHERE ${these} AND g."plantsStanding" IS NULL ORDER BY k."id"`,
    },
  };
}

/** The most that can have stood in a grow-out of which nobody counted it. */
export function mostStandingOf(found: { readonly counts: readonly CountSql[]; readonly passes: readonly PassSql[] }) {
  const counts = grouped(standingOf(found.counts), ({ growOutId }) => growOutId);
  const passes = grouped(standingOf(found.passes), ({ growOutId }) => growOutId);
  return (row: {
    readonly id: string;
    readonly plantsStanding: number | null;
    readonly seedsSown: number | null;
    readonly cropKey: string;
  }): number | null => {
    if (row.plantsStanding !== null) return null;
    const { seedsSown, cropKey } = row;
    return mostStanding({
      record: { seedsSown },
      counts: counts.get(row.id) ?? [],
      passes: passes.get(row.id) ?? [],
      clusters: sownInClusters(cropKey),
    });
  };
}
