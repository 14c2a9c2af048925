import { type Database, readTogether, type Selection, sql } from "@/lib/db";
import { separateSexes } from "@/lib/science/crops/mating";
import { sownInClusters } from "@/lib/science/crops/seed-clusters";
import type { Assumption } from "@/lib/science/outcome";
import { profileOfCrop } from "../crops/profile-of-crop";
import { seedSharesOf } from "../figures/read-records";
import { endOfOutcome } from "./end-grow-out";
import {
  type CountOnRecord,
  type FloweringOnRecord,
  inOrderOfDays,
  type PassOnRecord,
  standingOf,
} from "./field-records";
import { fieldWarnings } from "./field-warnings";
import type { GrowOutRead } from "./read-grow-out";
import type { SizeGround } from "./size-so-far";

/** A rogue pass of some grow-out of the variety. */
export interface PassOfVariety extends PassOnRecord {
  readonly growOutId: string;
  readonly growOut: string;
  readonly sownFirst: string | null;
}

/** What a grow-out's page shows of its counts, passes and flowering, and all that its size is worked out from. */
export interface FieldRead {
  readonly counts: readonly CountOnRecord[];
  readonly passes: readonly PassOnRecord[];
  readonly flowering: readonly FloweringOnRecord[];
  /** of all grow-outs of the variety */
  readonly passesOfVariety: readonly PassOfVariety[];
  readonly warnings: ReadonlyMap<string, readonly Assumption[]>;
  readonly size: SizeGround;
  readonly crop: {
    readonly key: string;
    readonly separate: boolean;
    readonly clusters: boolean;
    /** seeds in its second year: roots are lifted and replanted */
    readonly biennial: boolean;
    readonly wind: boolean;
  };
}

/** Reads the field of a grow-out that was read. One statement. */
export async function readField(db: Database, read: GrowOutRead): Promise<FieldRead> {
  const { growOut, variety } = read;
  const found = await readTogether(db, selections(growOut.id, growOut.varietyId));
  const counts = inOrderOfDays(standingOf(found.counts));
  const passesOfVariety = inOrderOfDays(standingOf(found.passes));
  const passes = passesOfVariety.filter((pass) => pass.growOutId === growOut.id);
  const flowering = inOrderOfDays(standingOf(found.flowering));
  const [row] = found.crop;
  const own = found.crop.flatMap(({ field, value }) => (field === null || value === null ? [] : [{ field, value }]));
  const { field: _field, value: _value, ...columns } = row ?? emptyCrop;
  const profile = profileOfCrop(columns, own);
  const clusters = sownInClusters(variety.crop.key);
  const separate = separateSexes(profile);
  const seen = {
    ...{ counts, passes, flowering },
    plantsMin: variety.crop.plantsMin,
    daysToFlower: profile.daysToFlowerMin,
    growOut: { sownFirst: growOut.sownFirst, seedsSown: growOut.seedsSown, separate },
  };
  return {
    ...{ counts, passes, flowering, passesOfVariety },
    warnings: fieldWarnings(seen),
    crop: {
      key: variety.crop.key,
      separate,
      clusters,
      biennial: profile.lifeCycle === "biennial",
      wind: profile.pollinationVector === "wind",
    },
    size: {
      ...{ counts, passes, clusters },
      record: {
        id: growOut.id,
        name: growOut.name,
        varietyId: growOut.varietyId,
        seedsSown: growOut.seedsSown,
        plantsStanding: growOut.plantsStanding,
        malesStanding: growOut.malesStanding,
        roguedBeforePollen: growOut.roguedBeforePollen,
        roguedAfterPollen: growOut.roguedAfterPollen,
        seedParents: growOut.seedParents,
        seedShares: seedSharesOf(
          growOut.seedShares,
          growOut.seedSharesCv,
          read.plants.filter((plant) => plant.kept).map((plant) => ({ amount: plant.seedGrams })),
        ),
        selfingRate: growOut.selfingRate,
        foreignPollen: growOut.foreignPollen,
        detasselled: growOut.detasselled,
        seedParentsDetasselled: growOut.seedParentsDetasselled,
        seedParentsAtMost: null,
      },
      profile: {
        matingSystem: profile.matingSystem,
        selfIncompatible: profile.selfIncompatible,
        outcrossingPctMin: profile.outcrossingPctMin,
        outcrossingPctMax: profile.outcrossingPctMax,
      },
      clonal: variety.crop.clonal,
      inbreeding: meanInbreeding(read.parents),
      seedParentsMeant: growOut.seedParentsPlanned ?? markedToKeep(read.plants),
      over: growOut.outcome !== null && endOfOutcome(growOut.outcome)?.end !== "seed kept",
      seedTaken: read.harvested.length > 0 || read.harvests.length > 0,
      floor: variety.crop.plantsMin,
    },
  };
}

/** Mean F of the lots sown, by their shares; null where one is not known. */
function meanInbreeding(parents: GrowOutRead["parents"]): number | null {
  if (parents.length === 0) return null;
  let sum = 0;
  for (const { share, inbreeding } of parents) {
    const part = share ?? (parents.length === 1 ? 1 : null);
    if (part === null || inbreeding === null) return null;
    sum += part * inbreeding;
  }
  return sum;
}

/** Plants whose last mark says to keep them, and that were not lost since; null where there is none. */
function markedToKeep(plants: GrowOutRead["plants"]): number | null {
  const kept = plants.filter(({ marks }) => {
    const last = marks.at(-1);
    return last?.intent === "keep" && (last.fate === null || last.fate === "harvested");
  });
  return kept.length === 0 ? null : kept.length;
}

interface CropColumns {
  readonly matingSystem: string | null;
  readonly selfIncompatible: string | null;
  readonly outcrossingPctMin: number | null;
  readonly outcrossingPctMax: number | null;
  readonly pollinationVector: string | null;
  readonly lifeCycle: string | null;
  readonly daysToFlowerMin: number | null;
}
interface CropRow extends CropColumns {
  readonly field: string | null;
  readonly value: string | null;
}

const emptyCrop: CropRow = {
  matingSystem: null,
  selfIncompatible: null,
  outcrossingPctMin: null,
  outcrossingPctMax: null,
  pollinationVector: null,
  lifeCycle: null,
  daysToFlowerMin: null,
  field: null,
  value: null,
};

const entered = {
  id: "text",
  on: "text",
  onFirst: "text",
  onLast: "text",
  note: "text",
  stewardId: "text",
  replacesId: "text",
} as const;

function selections(growOutId: string, varietyId: string) {
  const counts: Selection<CountOnRecord> = {
    columns: { ...entered, stage: "text", plants: "number", males: "number", thinnedBy: "text" },
    rows: sql`SELECT c.* FROM "StageCount" c WHERE c."growOutId" = ${growOutId} ORDER BY c."id"`,
  };
  const passes: Selection<PassOfVariety> = {
    columns: {
      ...entered,
      ...{ stage: "text", timing: "text", looked: "number", pulled: "number", reason: "text", left: "number" },
      ...{ growOutId: "text", growOut: "text", sownFirst: "text" },
    },
    rows: sql`
      SELECT p.*, g."name" AS "growOut", g."sownFirst" FROM "RoguePass" p JOIN "GrowOut" g ON g."id" = p."growOutId"
      WHERE g."varietyId" = ${varietyId} ORDER BY p."id"`,
  };
  const flowering: Selection<FloweringOnRecord> = {
    columns: { ...entered, organ: "text", moment: "text" },
    rows: sql`SELECT f.* FROM "FloweringNote" f WHERE f."growOutId" = ${growOutId} ORDER BY f."id"`,
  };
  const crop: Selection<CropRow> = {
    columns: {
      ...{ matingSystem: "text", selfIncompatible: "text", outcrossingPctMin: "number", outcrossingPctMax: "number" },
      ...{ pollinationVector: "text", lifeCycle: "text", daysToFlowerMin: "number", field: "text", value: "text" },
    },
    rows: sql`
      SELECT c."matingSystem", c."selfIncompatible", c."outcrossingPctMin", c."outcrossingPctMax", c."pollinationVector", c."lifeCycle",
        c."daysToFlowerMin", o."field", o."value"
      FROM "Variety" v JOIN "Crop" c ON c."id" = v."cropId" LEFT JOIN "CropOverride" o ON o."cropId" = c."id"
      WHERE v."id" = ${varietyId} ORDER BY o."id"`,
  };
  return { counts, passes, flowering, crop };
}
