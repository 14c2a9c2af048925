import listed from "./cautions.json";

/** Where the hand is. `jar` is the lot at rest, on its page. */
export type Step =
  | "sow"
  | "rogue"
  | "taste"
  | "harvest"
  | "extract"
  | "thresh"
  | "dry"
  | "store"
  | "jar"
  | "test"
  | "share"
  | "blend";

/** A usual caution: what it is about, and the care to take. Never a verdict that something may be eaten. */
export interface Caution {
  readonly code: string;
  readonly title: string;
  readonly care: readonly string[];
}

/** What is known of the seed in hand; what is not known is left out or null. */
export interface SeedInHand {
  /** key of its crop in the crop list */
  readonly crop?: string | null;
  readonly treatment?: string | null;
  /** what it was treated with */
  readonly substance?: string | null;
  /** what the crop list says of the crop */
  readonly cropCautions?: string | null;
  readonly cropName?: string | null;
  /** what the steward wrote of the variety */
  readonly varietyCautions?: string | null;
  readonly varietyName?: string | null;
}

interface Listed extends Caution {
  /** keys of crops, or their beginnings; absent: every crop */
  readonly crops?: readonly string[];
  readonly steps: readonly string[];
}

const harms = /toxic|poison|bitter|unsafe|burn|irritat|aflatoxin|ergot|favism|cyanogenic|gloves|children|saponin/i;

/** The steps at which what the crop list says of harm is repeated. */
const stepsOfCrop: readonly Step[] = ["jar", "share", "extract", "thresh"];

/**
 * The usual cautions at a step of the work: of treated seed first, then what the steward wrote of the variety, then what is usual
 * for the crop at that step. Local food, farm-safety, post and waste rules stand above each. Source: the trade's usual cautions,
 * listed beside this file.
 */
export function cautionsAt(step: Step, seed: SeedInHand): Caution[] {
  const own: Caution[] = [...treated(step, seed), ...ofVariety(step, seed)];
  const usual = (listed as readonly Listed[])
    .filter(({ steps, crops }) => steps.includes(step) && (crops === undefined || isOne(seed.crop, crops)))
    .map(({ code, title, care }) => ({ code, title, care }));
  const known = usual.some(({ code }) => ofThisCrop.has(code));
  return [...own, ...usual, ...(known ? [] : ofCrop(step, seed))];
}

const ofThisCrop: ReadonlySet<string> = new Set(
  (listed as readonly Listed[]).flatMap((each) => (each.crops ? [each.code] : [])),
);

function isOne(crop: string | null | undefined, keys: readonly string[]): boolean {
  return !!crop && keys.some((key) => (key.endsWith("-") ? crop.startsWith(key) : crop === key));
}

function treated(step: Step, { treatment, substance }: SeedInHand): Caution[] {
  if (treatment !== "chemical" && treatment !== "unknown") return [];
  const title =
    treatment === "chemical"
      ? `Treated seed${substance ? `: ${substance}` : ""}`
      : "Perhaps treated, nobody knows with what";
  const here =
    step === "test"
      ? "Nothing of the test is eaten, fed or composted."
      : step === "share"
        ? "Never on a shelf where others help themselves; whoever gets it is told, and reads it on the packet."
        : step === "sow"
          ? "Keep it off your skin and out of the wind, and leave no spilled seed for birds."
          : "Not food, not feed, not for the compost; write it on the jar and on every packet.";
  return [
    {
      code: "treated",
      title,
      care: [`Wear gloves, raise no dust, wash your hands. ${here} Your local rules say where it goes.`],
    },
  ];
}

function ofVariety(step: Step, { varietyCautions, varietyName }: SeedInHand): Caution[] {
  if (!varietyCautions || step === "test" || step === "sow") return [];
  return [
    {
      code: "variety",
      title: varietyName ? `Care with ${varietyName}` : "Care with this variety",
      care: [varietyCautions],
    },
  ];
}

function ofCrop(step: Step, { cropCautions, cropName }: SeedInHand): Caution[] {
  if (!cropCautions || !stepsOfCrop.includes(step) || !harms.test(cropCautions)) return [];
  const care = `The crop list says: ${cropCautions}. Keep it labelled and out of children’s reach; your local rules stand above this.`;
  return [{ code: "crop", title: cropName ? `Care with ${cropName}` : "Care with this crop", care: [care] }];
}
