import { type Selection, type Sql, sql } from "@/lib/db";
import { grouped } from "../change-set/grouped";
import { byPlant, type HarvestOfGrowOut, keptParents, type SeedParent } from "../harvests/harvest";
import { sharesOfHarvest } from "../harvests/shares-of-harvest";
import type { HarvestRecord } from "./records";

/** A harvest with one of its seed parents; one row a seed parent, at least one a harvest. */
interface HarvestParentSql {
  readonly id: string;
  readonly growOutId: string;
  readonly lotId: string | null;
  readonly bulked: string | null;
  readonly seedParents: number | null;
  readonly detasselled: number | null;
  readonly grams: number | null;
  readonly seeds: number | null;
  readonly parentId: string | null;
  readonly plantId: string | null;
  readonly parentGrams: number | null;
  readonly parentSeeds: number | null;
  readonly share: number | null;
  readonly lost: string | null;
}

/** The standing harvests of grow-outs that were harvested more than once, with their seed parents. */
export function harvestParents(these: Sql): Selection<HarvestParentSql> {
  return {
    columns: {
      ...{ id: "text", growOutId: "text", lotId: "text", bulked: "text", seedParents: "number", detasselled: "number" },
      ...{ grams: "number", seeds: "number", parentId: "text", plantId: "text", parentGrams: "number" },
      ...{ parentSeeds: "number", share: "number", lost: "text" },
    },
    rows: sql`
      SELECT h."id", h."growOutId", h."lotId", h."bulked", h."seedParents", h."detasselled", h."grams", h."seeds", s."id" AS "parentId",
        COALESCE(p."sameAsId", s."plantId") AS "plantId",
        s."grams" AS "parentGrams", s."seeds" AS "parentSeeds", s."share", s."lost"
      FROM "Harvest" h JOIN "GrowOut" g ON g."id" = h."growOutId" JOIN "Variety" v ON v."id" = g."varietyId"
      LEFT JOIN "HarvestSeedParent" s ON s."harvestId" = h."id" LEFT JOIN "Plant" p ON p."id" = s."plantId"
      WHERE ${these} AND NOT EXISTS (SELECT 1 FROM "Harvest" n WHERE n."replacesId" = h."id")
        AND EXISTS (SELECT 1 FROM "Harvest" o WHERE o."growOutId" = h."growOutId" AND o."id" <> h."id")
      ORDER BY h."id", s."id"`,
  };
}

/** By grow-out: its harvests with what each of its plants gave to each. */
export function ownHarvests(
  rows: readonly HarvestParentSql[],
): (growOutId: string) => readonly HarvestRecord[] | undefined {
  const ofGrowOut = grouped(rows, ({ growOutId }) => growOutId);
  return (growOutId) => {
    const own = ofGrowOut.get(growOutId);
    if (!own) return undefined;
    const harvests = [...grouped(own, ({ id }) => id).values()].flatMap(harvestOf);
    return plantByPlant(harvests) ?? undefined;
  };
}

type HarvestWithLot = HarvestOfGrowOut & { readonly lotId: string | null };

function harvestOf(rows: readonly HarvestParentSql[]): HarvestWithLot[] {
  const [first] = rows;
  if (!first) return [];
  const parents = rows.flatMap((row): SeedParent[] =>
    row.parentId === null
      ? []
      : [{ plantId: row.plantId, grams: row.parentGrams, seeds: row.parentSeeds, share: row.share, lost: row.lost }],
  );
  const { id, lotId, bulked, seedParents, detasselled, grams, seeds } = first;
  return [{ id, lotId, bulked, seedParents, detasselled, grams, seeds, parents }];
}

/**
 * What each plant gave to each harvest, all in one order of the plants. Plants that are known stand for themselves; of a harvest whose seed
 * parents were only counted, the one that gave most is taken to be the plant that gave most in the others, and so on down: that makes the
 * harvests as near as their counts allow (of two lists Σ q q' is greatest in the same order). Null where a harvest has no lot of its own, or
 * nobody knows how its seed parents shared, or tassels were taken, of nobody knows which of them.
 * Source: the rearrangement inequality, Hardy, Littlewood & Pólya 1934, Inequalities, 10.2.
 */
export function plantByPlant(harvests: readonly HarvestWithLot[]): readonly HarvestRecord[] | null {
  const told = harvests.filter(({ seedParents }) => seedParents !== 0);
  const lots = new Set(told.map(({ lotId }) => lotId));
  if (told.length < 2 || lots.size < told.length || lots.has(null)) return null;
  if (told.some(({ detasselled }) => (detasselled ?? 0) > 0)) return null;
  const known = told.filter(byPlant);
  const given = new Map<string, number>();
  const lists = new Map<string, readonly number[]>();
  for (const harvest of told) {
    const list = listOf(harvest);
    if (list === null) return null;
    lists.set(harvest.id, list);
  }
  for (const harvest of known) {
    for (const [place, plant] of plantsOf(harvest).entries())
      given.set(plant, (given.get(plant) ?? 0) + (lists.get(harvest.id)?.[place] ?? 0));
  }
  const most = Math.max(given.size, ...told.map(({ seedParents }) => seedParents ?? 0));
  const order = [...given].sort(([, a], [, b]) => b - a).map(([plant]) => plant);
  return told.flatMap((harvest): HarvestRecord[] => {
    const list = lists.get(harvest.id) ?? [];
    const seedShares = new Array<number>(most).fill(0);
    if (byPlant(harvest)) {
      for (const [place, plant] of plantsOf(harvest).entries()) {
        const at = order.indexOf(plant);
        seedShares[at] = (seedShares[at] ?? 0) + (list[place] ?? 0);
      }
    } else {
      for (const [place, share] of [...list].sort((a, b) => b - a).entries()) seedShares[place] = share;
    }
    return harvest.lotId === null ? [] : [{ lotId: harvest.lotId, seedShares }];
  });
}

function plantsOf(harvest: HarvestOfGrowOut): string[] {
  return keptParents(harvest.parents).flatMap(({ plantId }) => plantId ?? []);
}

/** Shares of sum 1, one a kept seed parent. */
function listOf(harvest: HarvestOfGrowOut): readonly number[] | null {
  const shares = sharesOfHarvest(harvest);
  if (shares === null) return null;
  const list = shares === "equal" ? new Array<number>(harvest.seedParents ?? 0).fill(1) : shares;
  const sum = list.reduce((total, share) => total + share, 0);
  return sum > 0 ? list.map((share) => share / sum) : null;
}
