import type { Client, Transaction } from "@/lib/db";
import { type Mating, separateSexes } from "@/lib/science/crops/mating";
import { sownInClusters } from "@/lib/science/crops/seed-clusters";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import { accepted, type Outcome } from "@/lib/science/outcome";
import type { RowOf } from "../change-set/records";
import { profileOfCrop } from "../crops/profile-of-crop";
import type { GrowOutInField } from "./count-faults";
import { type CountOnRecord, type FloweringOnRecord, type PassOnRecord, standingOf } from "./field-records";
import { growOutOf } from "./grow-out-of";

/** A grow-out with what stands of its counts, passes and flowering notes, and what its crop needs to be known for. */
export interface InField {
  readonly row: RowOf<"GrowOut">;
  readonly growOut: GrowOutInField;
  readonly profile: Mating;
  readonly plantsMin: number | null;
  readonly daysToFlower: number | null;
  readonly counts: readonly CountOnRecord[];
  readonly passes: readonly PassOnRecord[];
  readonly flowering: readonly FloweringOnRecord[];
}

/** Reads a grow-out for what is counted in it. Refused where there is none. */
export async function readInField(
  db: Client | Transaction,
  growOutId: string,
  today: CivilDay,
): Promise<Outcome<InField>> {
  const found = await growOutOf(db, growOutId);
  if (!found.ok) return found;
  const row = found.value;
  const where = { growOutId };
  const { crop } = await db.variety.findUniqueOrThrow({
    where: { id: row.varietyId },
    select: { crop: { include: { overrides: true } } },
  });
  const { overrides, ...columns } = crop;
  const profile = profileOfCrop(columns, overrides);
  return accepted({
    row,
    growOut: {
      sown: row.sown,
      sownFirst: row.sownFirst,
      endedOn: row.endedOn,
      seedsSown: row.seedsSown,
      seedParents: row.seedParents,
      today,
      clusters: sownInClusters(crop.key),
      separate: separateSexes(profile),
    },
    profile,
    plantsMin: profile.plantsMin,
    daysToFlower: profile.daysToFlowerMin,
    counts: standingOf(await db.stageCount.findMany({ where, orderBy: { id: "asc" } })) as CountOnRecord[],
    passes: standingOf(await db.roguePass.findMany({ where, orderBy: { id: "asc" } })),
    flowering: standingOf(await db.floweringNote.findMany({ where, orderBy: { id: "asc" } })) as FloweringOnRecord[],
  });
}
