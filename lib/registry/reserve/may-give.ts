import type { SeedCount } from "../lots/live-seeds";
import { setAside } from "./good-lots";
import type { ReserveOfVariety } from "./reserve-of-variety";

/** Why seed may or may not be given, for the sentence on the page. */
export type GiveReason =
  | "status"
  | "warning"
  | "empty"
  | "amount not known"
  | "never tested"
  | "tests too low"
  | "tested too long ago"
  | "likely below the line"
  | "plants not known"
  | "seeds not known"
  | "reserve not met"
  | "reserve may not be met"
  | "above the reserve";

export interface GiveVerdict {
  readonly answer: "yes" | "no" | "cannot tell";
  readonly why: GiveReason;
  /** seeds of this lot above the reserve, at most what is in the jar; null where nothing bounds it */
  readonly free: SeedCount | null;
  /** seeds of this lot that the reserve holds back; null not known */
  readonly keptBack: number | null;
  /** nobody else is confirmed to have it: a second place goes before the reserve, and the two rules collide */
  readonly onlyPlace: boolean;
}

export interface GiveQuestion {
  readonly lotId: string;
  readonly status: string | null;
  readonly grams: number | null;
  /** a warning on the lot that nobody has closed */
  readonly openWarning: boolean;
  readonly tested: boolean;
  /** by its tests and the usual life of its kind it is likely below the line for renewing by now */
  readonly likelyBelow: boolean;
}

const over: ReadonlySet<string> = new Set(["finished", "dead", "discarded"]);

/**
 * May seed be given from a lot, and how much: what the holder's good lots hold together above the reserve, at most what this lot holds.
 * Answered at the cautious end: "yes" only where even the fewest seeds that may be there leave some above the reserve.
 */
export function mayGive(question: GiveQuestion, kept: ReserveOfVariety): GiveVerdict {
  const onlyPlace = kept.placesElsewhere === 0;
  const say = (
    answer: GiveVerdict["answer"],
    why: GiveReason,
    free: SeedCount | null = null,
    keptBack: number | null = null,
  ) => ({
    answer,
    why,
    free,
    keptBack,
    onlyPlace,
  });
  const { status, grams } = question;
  if (status !== null && (over.has(status) || setAside.has(status))) return say("no", "status");
  if (question.openWarning) return say("no", "warning");
  if (grams === null) return say("cannot tell", "amount not known");
  if (grams <= 0) return say("no", "empty", { value: 0, low: 0, high: 0, grade: "counted" });
  if (!question.tested) return say("cannot tell", "never tested");
  const own = kept.good.find((each) => each.lot.id === question.lotId);
  if (!own) return notGood(question, kept, say);
  if (question.likelyBelow) return say("cannot tell", "likely below the line");
  if (kept.wanted === null || kept.reserve === null) return say("cannot tell", "plants not known");
  if (own.seeds === null) return say("cannot tell", "seeds not known");
  const free = freeOf(own.seeds, kept.onHand, kept.reserve.seeds);
  const keptBack = own.seeds.value === null ? null : Math.max(0, own.seeds.value - (free.value ?? 0));
  if (free.low >= 1) return say("yes", "above the reserve", free, keptBack);
  return free.high < 1
    ? say("no", "reserve not met", free, keptBack)
    : say("cannot tell", "reserve may not be met", free, keptBack);
}

type Say = (answer: GiveVerdict["answer"], why: GiveReason) => GiveVerdict;

function notGood({ lotId }: GiveQuestion, kept: ReserveOfVariety, say: Say): GiveVerdict {
  const why = kept.leftOut.find(({ lot }) => lot.id === lotId)?.why;
  return why === "tested too long ago" ? say("cannot tell", why) : say("no", "tests too low");
}

/** What lies above the reserve of all good lots together, at most what this one holds, end by end. */
function freeOf(own: SeedCount, onHand: SeedCount, reserved: number): SeedCount {
  const above = (held: number, all: number) => Math.max(0, Math.min(held, all - reserved));
  return {
    value: own.value === null || onHand.value === null ? null : above(own.value, onHand.value),
    low: above(own.low, onHand.low),
    high: above(own.high, onHand.high),
    grade: onHand.grade,
  };
}
