import type { Database } from "@/lib/db";
import { grouped } from "../change-set/grouped";
import { figuresOfAll } from "../figures/read-figures";
import { storedRows } from "../season/stored-rows";

/** A grow-out as the list shows it. Null is unknown. */
export interface GrowOutRow {
  readonly id: string;
  readonly name: string;
  readonly varietyId: string;
  readonly variety: string;
  readonly seedCoat: string | null;
  readonly cropKey: string;
  readonly crop: string;
  readonly clonal: boolean;
  readonly plantsMin: number | null;
  readonly steward: string | null;
  readonly sown: string | null;
  readonly sownFirst: string | null;
  readonly purpose: string | null;
  readonly plantsStanding: number | null;
  readonly seedParents: number | null;
  readonly effectiveSize: number | null;
  readonly outcome: string | null;
  readonly lots: readonly { id: string; number: string }[];
}

/** All grow-outs, the newest first, those without a date last; of one variety where it is named. Two statements where nothing changed since they were last read. */
export async function listGrowOuts(db: Database, varietyId?: string): Promise<GrowOutRow[]> {
  const stored = await storedRows(db);
  const figures = await figuresOfAll(db);
  const people = new Map(stored.people.map((person) => [person.stewardId, person.name]));
  const lots = grouped(
    stored.lots.filter((lot) => lot.growOutId !== null),
    (lot) => lot.growOutId,
  );
  const rows = stored.growOuts.filter((row) => varietyId === undefined || row.varietyId === varietyId);
  return rows
    .flatMap((row): GrowOutRow[] => {
      const variety = stored.varieties.get(row.varietyId);
      if (!variety) return [];
      const from = lots.get(row.id) ?? [];
      const { crop } = variety;
      return [
        {
          variety: variety.name,
          seedCoat: variety.seedCoat,
          cropKey: crop.key,
          crop: crop.commonName,
          clonal: crop.clonal,
          plantsMin: crop.plantsMin,
          steward: row.stewardId === null ? null : (people.get(row.stewardId) ?? null),
          effectiveSize: figures.get(from[0]?.id ?? "")?.effectiveSize ?? null,
          lots: from.map((lot) => ({ id: lot.id, number: lot.number })),
          ...row,
        },
      ];
    })
    .sort((a, b) => {
      const [one, other] = [a.sownFirst ?? "", b.sownFirst ?? ""];
      return one === other ? (a.name < b.name ? -1 : 1) : one > other ? -1 : 1;
    });
}
