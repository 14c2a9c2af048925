import type { Database } from "@/lib/db";
import type { Settings } from "@/lib/schemas/settings";
import type { MixGround } from "@/lib/science/blend/ground-of-mix";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import { cautiousKinship } from "../figures/cautious-kinship";
import { readLineage } from "../figures/read-records";
import { readLotsToSow } from "../grow-outs/read-lots-to-sow";
import type { LotToSow } from "../grow-outs/sowing-plan";
import { seedsIn } from "../lots/live-seeds";
import { type Objection, strainObjections } from "../lots/objections";
import { type BlendCandidate, readBlendGround } from "../lots/read-blend-ground";
import { assumedEmergence } from "../reserve/sowing-for";
import { type LineageStanding, lineageStanding } from "./lineage-standing";
import type { VarietyRead } from "./read-variety";

/** Something that keeps a lot out of a mix that is to restore the variety. */
export interface AgainstLot {
  readonly code: Objection["code"] | RestoreCode;
  /** follows the lot's number */
  readonly words: string;
  /** whether a reason may overrule it; what cannot be reckoned cannot be overruled */
  readonly overridable: boolean;
}

export type RestoreCode =
  | "identity-not-verified"
  | "foreign-pollen"
  | "amount-not-known"
  | "seed-weight-not-known"
  | "lineage-not-known"
  | "nothing-lives"
  | "reserve-not-met";

/** A living lot of the variety, in whose hands it ever is. */
export interface LotToRestoreWith {
  readonly id: string;
  readonly number: string;
  readonly year: string | null;
  readonly holder: string | null;
  readonly against: readonly AgainstLot[];
  /** of the seed that lives in it, by its last test; null not known */
  readonly living: number | null;
  /** it was never tested: half of its seed is taken as alive, which counts only where a reason overrules that */
  readonly lifeAssumed: boolean;
  /** living seeds that its holder can part with */
  readonly canGive: number | null;
  /** whether what must stay is the holder's reserve, or half of the jar because the reserve cannot be worked out */
  readonly keeps: "reserve" | "half";
  /** living seeds in a gram of it; null not known */
  readonly livingPerGram: number | null;
  readonly foreign: boolean;
  readonly standing: LineageStanding;
  readonly founders: readonly string[];
}

/** All that the advice is reckoned from. */
export interface RestoreGround {
  readonly lots: readonly LotToRestoreWith[];
  /** in the order of the lots, founders as near as their records allow; null where no lineage can be followed */
  readonly ground: MixGround | null;
  /** living seeds that bring up one grow-out as the variety or the crop wants it; null not known */
  readonly seedsWanted: { readonly seeds: number; readonly plants: number } | null;
  readonly leftOut: number;
}

/**
 * The living lots of a variety in any hands, with what stands against each, what each can give above its holder's reserve, and how near they
 * are to each other. What it takes of the jar is living seeds, by the last test.
 */
export async function readRestore(
  db: Database,
  read: VarietyRead,
  { settings, today }: { readonly settings: Settings; readonly today: CivilDay },
): Promise<RestoreGround> {
  const { variety, crop } = read;
  const blend = await readBlendGround(db, { varietyId: variety.id, cropId: crop.id, asked: [] });
  const jars = new Map((await readLotsToSow(db, variety.id, { settings, today })).map((lot) => [lot.id, lot]));
  const strains = strainObjections(blend.lots);
  const lots = blend.lots.map((lot): LotToRestoreWith => {
    const seed = seedOf(lot, jars.get(lot.id));
    const standing = lineageStanding(
      { lineageFigures: true, diversityRetained: lot.lineageKnown ? 1 : null, founders: lot.founders },
      crop.matingSystem,
      blend.founderLines,
    );
    const foreign = (lot.foreignAncestry ?? 0) > 1e-9;
    return {
      ...{ id: lot.id, number: lot.number, year: lot.year, holder: lot.holder, founders: lot.founders },
      ...{ ...seed, foreign, standing },
      against: [
        ...lot.objections,
        ...strains.filter(({ number }) => number === lot.number),
        ...ownObjections(lot, standing, foreign, seed.canGive, jars.get(lot.id)?.identityGrade ?? null),
      ],
    };
  });
  const plants = variety.plantsWanted ?? crop.plantsMin;
  const records = await readLineage(db, [crop.id]);
  const cautious = await cautiousKinship(
    records,
    lots.map(({ id }) => id),
  );
  return {
    lots,
    ground: blend.ground && cautious ? { ...blend.ground, coancestry: cautious } : blend.ground,
    seedsWanted: plants === null ? null : { plants, seeds: Math.ceil(plants / assumedEmergence) },
    leftOut: blend.leftOut,
  };
}

/** Words of a lot's identity by which nobody has seen that it is the variety. */
const unverified: ReadonlySet<string> = new Set(["guessed from seed", "unknown"]);

function ownObjections(
  lot: BlendCandidate,
  standing: LineageStanding,
  foreign: boolean,
  canGive: number | null,
  identity: string | null,
): AgainstLot[] {
  const found: AgainstLot[] = [];
  const say = (code: RestoreCode, words: string, overridable: boolean) => found.push({ code, words, overridable });
  if (standing === "plants not known") say("lineage-not-known", "has a lineage that is not known throughout", false);
  if (foreign) say("foreign-pollen", "has genes from foreign pollen, which only seem to add", true);
  if (identity !== null && unverified.has(identity))
    say("identity-not-verified", `is not verified (${identity}): nobody has seen that it is the variety`, true);
  if (lot.grams === null) say("amount-not-known", "holds an amount that is not known", false);
  else if (lot.thousandSeedGrams === null)
    say("seed-weight-not-known", "has no seed weight: count and weigh some of it", false);
  else if (lot.test?.germination === 0) say("nothing-lives", "did not germinate at all", false);
  else if (canGive !== null && canGive < 1)
    say("reserve-not-met", "is needed by its holder: it does not go beyond the reserve", false);
  return found;
}

/** Of a jar that was never tested. */
const aliveUntested = 0.5;

/** What lives in a jar and what of it can be given: what goes beyond the holder's reserve, taken evenly from all of the holder's good jars. */
function seedOf(lot: BlendCandidate, jar: LotToSow | undefined) {
  const seeds =
    lot.thousandSeedGrams === null ? null : seedsIn(lot.grams, lot.thousandSeedGrams, { min: null, max: null });
  const alive = lot.test?.germination ?? aliveUntested;
  const living = seeds?.value == null ? null : seeds.value * alive;
  const livingPerGram = lot.thousandSeedGrams === null ? null : (1000 / lot.thousandSeedGrams) * alive;
  const reserve = jar?.reserve ?? null;
  const held = reserve?.onHand.value ?? null;
  const known =
    reserve !== null && reserve.seeds !== null && held !== null && held > 0 && reserve.good.includes(lot.id);
  const part = known ? Math.max(0, 1 - (reserve.seeds ?? 0) / (held ?? 1)) : 0.5;
  return {
    living,
    livingPerGram,
    lifeAssumed: lot.test === null,
    canGive: living === null ? null : Math.floor(living * part),
    keeps: known ? ("reserve" as const) : ("half" as const),
  };
}
