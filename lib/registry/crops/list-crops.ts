import type { Database } from "@/lib/db";

/** A crop in the list of crops. */
export interface CropInList {
  readonly id: string;
  readonly key: string;
  readonly commonName: string;
  readonly latinName: string | null;
  readonly matingSystem: string | null;
  readonly lifeCycle: string | null;
  readonly plantsMin: number | null;
  readonly own: boolean;
  readonly varieties: number;
  readonly ownValues: number;
}

/** All crops by their common name, with how many varieties each has here. */
export async function listCrops(db: Database): Promise<CropInList[]> {
  const rows = await db.read.crop.findMany({
    select: {
      id: true,
      key: true,
      commonName: true,
      latinName: true,
      matingSystem: true,
      lifeCycle: true,
      plantsMin: true,
      own: true,
      _count: { select: { varieties: true, overrides: true } },
    },
    orderBy: { commonNameKey: "asc" },
  });
  return rows.map(({ _count, ...crop }) => ({ ...crop, varieties: _count.varieties, ownValues: _count.overrides }));
}
