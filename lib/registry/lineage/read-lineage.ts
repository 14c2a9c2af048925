import { type Database, readTogether } from "@/lib/db";
import { figuresOfCropOf } from "../figures/read-figures";
import { founderLinesOf } from "../varieties/lineage-standing";
import { type LotOfLineage, leading, lotsOfLineage } from "./lineage-lots";
import { type ClaimSql, lineageSelections, type VarietyOfLineage } from "./lineage-selections";

/** Who holds seed of it, with the place as far as it is to be seen. */
export interface StewardOfLineage {
  readonly id: string;
  readonly name: string | null;
  readonly place: string | null;
}

/** What somebody says of where a lot is from. */
export type ClaimOfLineage = ClaimSql;

export interface LineageRead {
  readonly variety: VarietyOfLineage;
  readonly lots: readonly LotOfLineage[];
  readonly claims: readonly ClaimOfLineage[];
  /** those who hold or grew any of the lots */
  readonly stewards: readonly StewardOfLineage[];
}

/** The lineage of a variety from its records; null where there is no such variety. Two statements, one more after a change. */
export async function readLineage(db: Database, varietyId: string): Promise<LineageRead | null> {
  const { varieties, claims, stewards, ...rows } = await readTogether(db, lineageSelections(varietyId));
  const [variety] = varieties;
  if (!variety) return null;
  const figures = await figuresOfCropOf(db, varietyId);
  const lots = lotsOfLineage(varietyId, rows, figures, variety.matingSystem, founderLinesOf(rows.lots));
  const lead = leading(rows.lots);
  const drawn = new Set(lots.map(({ id }) => id));
  const holders = new Set(lots.map(({ holderId }) => holderId));
  return {
    variety,
    lots,
    claims: claims
      .map((claim) => ({
        ...claim,
        lotId: lead(claim.lotId),
        parentLotId: claim.parentLotId === null ? null : lead(claim.parentLotId),
      }))
      // that two records are one lot is answered where they are read as one
      .filter(({ lotId, parentLotId }) => drawn.has(lotId) && parentLotId !== lotId),
    stewards: stewards
      .filter(({ id }) => holders.has(id))
      .map(({ id, name, place, placeGrain }) => ({ id, name, place: placeGrain === "none" ? null : place })),
  };
}
