import type { Client, Database } from "@/lib/db";
import type { Settings } from "@/lib/schemas/settings";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import { profileOfCrop } from "../crops/profile-of-crop";
import { type JarRead, readJar } from "../lots/read-jar";
import { recordIdsOfLot } from "../lots/same-lot";
import type { GiveVerdict } from "../reserve/may-give";
import { mayHoldSeed } from "../varieties/holders";
import type { GivingGround } from "./giving-rules";
import { everTested, type SeedToTellOf } from "./what-to-say";

/** A steward to whom seed can go. */
export interface StewardToGiveTo {
  readonly id: string;
  readonly name: string;
  readonly kind: string | null;
}

/** All that giving from a lot rests on. */
export interface GivingRead {
  readonly jar: JarRead;
  readonly give: GiveVerdict;
  readonly ground: GivingGround;
  readonly toTell: SeedToTellOf;
  /** buildings (or places) in which containers of the lot stand */
  readonly buildings: readonly string[];
}

/** Reads what giving from a lot rests on. Eight statements where the figures of its crop are at hand; null where there is no such lot. */
export async function readGiving(
  db: Database,
  lotId: string,
  { settings, today }: { settings: Settings; today: CivilDay },
): Promise<GivingRead | null> {
  const jar = await readJar(db, lotId, { settings, today });
  if (!jar) return null;
  const { lot, holdings } = jar;
  const kind = await readKindOfSeed(db.read, lot.varietyId);
  const openWarnings = await readOpenWarnings(db.read, lotId, lot.varietyId);
  const give = jar.giveVerdict(openWarnings.length > 0);
  const others = holdings.filter((each) => each.id !== lotId && mayHoldSeed(each));
  const here = others.filter((each) => each.holderId === lot.holderId).length;
  const ground: GivingGround = {
    lot: { ...lot, tested: everTested(jar.tests), openWarnings },
    variety: lot.variety,
    give,
    reserveSeeds: jar.reserve.reserve?.seeds ?? null,
    grams: jar.figures?.gramsOnHand ?? null,
    thousandSeedGrams: lot.thousandSeedGrams,
    otherLotsHere: here,
    otherLotsElsewhere: others.length - here,
    rights: kind.rights,
    sensitivity: kind.sensitivity,
  };
  const { crop } = lot;
  const toTell: SeedToTellOf = {
    ...kind,
    seed: {
      crop: crop.cropKey,
      treatment: lot.treatment,
      substance: lot.treatmentSubstance,
      cropCautions: crop.cropCautions,
      cropName: crop.commonName,
      varietyCautions: lot.varietyCautions,
      varietyName: lot.variety,
    },
    clonal: crop.clonal,
    matingSystem: crop.matingSystem,
    plantsWanted: lot.plantsWanted,
    plantsMin: crop.plantsMin,
    isolationGrade: lot.isolationGrade,
    treatment: lot.treatment,
    tested: everTested(jar.tests),
  };
  const own = holdings.find((each) => each.id === lotId);
  return { jar, give, ground, toTell, buildings: own?.buildings ?? [] };
}

interface KindSql {
  readonly rights: string | null;
  readonly sensitivity: string;
  readonly isolationWantedM: number | null;
  readonly pollinationVector: string | null;
  readonly plantsRecommendedMax: number | null;
  readonly isolationHomeMinM: number | null;
  readonly isolationHomeMaxM: number | null;
  readonly ownField: string | null;
  readonly ownValue: string | null;
}

/** What a variety and its crop say of passing seed on, own values in the place of the list's. One statement, a row an own value. */
async function readKindOfSeed(db: Client, varietyId: string) {
  const rows = await db.$queryRaw<KindSql[]>`
    SELECT v."rights", v."sensitivity", v."isolationWantedM", c."pollinationVector", c."plantsRecommendedMax", c."isolationHomeMinM",
      c."isolationHomeMaxM", o."field" AS "ownField", o."value" AS "ownValue"
    FROM "Variety" v JOIN "Crop" c ON c."id" = v."cropId" LEFT JOIN "CropOverride" o ON o."cropId" = c."id"
    WHERE v."id" = ${varietyId}`;
  const [row] = rows;
  if (!row) throw new Error(`no variety ${varietyId}`);
  const { ownField: _field, ownValue: _value, ...kind } = row;
  const own = rows.flatMap(({ ownField, ownValue }) =>
    ownField === null || ownValue === null ? [] : [{ field: ownField, value: ownValue }],
  );
  return profileOfCrop(kind, own);
}

/** Reasons of the warnings on a lot or its variety that nobody has closed. Two statements. */
async function readOpenWarnings(db: Client, lotId: string, varietyId: string): Promise<string[]> {
  const warnings = await db.warning.findMany({
    where: {
      closedOn: null,
      OR: [{ lotId: { in: await recordIdsOfLot(db, lotId) } }, { varietyId, lotId: null }],
    },
    select: { reason: true },
    orderBy: { id: "asc" },
  });
  return warnings.map((warning) => warning.reason);
}

/** The stewards of the registry by name. One statement. */
export async function readStewardsToGiveTo(db: Client): Promise<StewardToGiveTo[]> {
  return db.$queryRaw<StewardToGiveTo[]>`
    SELECT s."id", p."name", s."kind" FROM "Steward" s JOIN "Person" p ON p."stewardId" = s."id" ORDER BY p."nameKey", p."name"`;
}
