import { addDays, type CivilDay } from "@/lib/science/dates/civil-day";
import { type ScoredPlants, scoredNotChosen } from "../plants/scored-not-chosen";
import type { LifeOfGrowOut, LifeStage, StageOfLife } from "./life-of-grow-out";
import { markShown } from "./plants-of-grow-out";
import type { GrowOutRead } from "./read-grow-out";

/** What a hand can do next with a grow-out. */
export type NextOfGrowOut =
  | "sow"
  | "choose-plot"
  | "count-up"
  | "count-thinned"
  | "count-lifted"
  | "replant"
  | "count-standing"
  | "look-for-neighbours"
  | "rogue"
  | "note-flowering"
  | "mark-plants"
  | "choose-plants"
  | "harvest"
  | "harvest-again"
  | "end"
  | "say-how-it-ended";

type Read = Pick<GrowOutRead, "growOut" | "variety" | "events" | "harvests" | "harvested" | "plots" | "plants">;

/** Roguing and neighbours come this many days before the flower that is to be expected. */
const daysBeforeFlower = 45;

/** Roots have grown so many days before anybody lifts them. */
const daysToRoots = 80;

/**
 * What the hand does next, the most pressing first, by what is on record and by the days of the crop: only what its stage of life allows. A
 * grow-out of which nothing more is to be done gives nothing.
 */
export function nextOfGrowOut(read: Read, life: LifeOfGrowOut, today: CivilDay): NextOfGrowOut[] {
  const { growOut, harvested, harvests, plots } = read;
  const gave = harvested.length > 0 || harvests.length > 0;
  if (life.stands.stage === "planned") return ["sow", ...(plots.length === 0 ? (["choose-plot"] as const) : [])];
  if (life.stands.stage === "over") return life.stands.said || gave ? [] : ["say-how-it-ended"];
  const perennial = read.variety.crop.lifeCycle === "perennial";
  if (gave && !perennial)
    return ["end", "harvest-again", ...(growOut.plantsStanding === null ? (["count-standing"] as const) : [])];
  const ripe = isRipe(read, life, today);
  return [
    ...(scoredNotChosen(scoredPlants(read)) ? ["choose-plants" as const] : []),
    ...(ripe ? [gave ? ("harvest-again" as const) : ("harvest" as const)] : []),
    ...plantsToCount(read, life, today),
    ...atFlower(read, life, today),
    ...(gave ? (["end"] as const) : []),
  ];
}

function scoredPlants({ plants }: Read): ScoredPlants {
  const scored = plants.filter(({ scores }) => scores.size > 0);
  return { scored: scored.length, kept: scored.filter((plant) => markShown(plant)?.intent === "keep").length };
}

function isRipe(read: Read, { stages }: LifeOfGrowOut, today: CivilDay): boolean {
  const next = stages.find((each) => each.id === "harvest next");
  if (next?.days && next.days.first <= today) return true;
  return read.events.some((event) => event.kind === "flowering" && event.what === "last") && next !== undefined;
}

function plantsToCount({ growOut, variety }: Read, life: LifeOfGrowOut, today: CivilDay): NextOfGrowOut[] {
  const seen = (stage: StageOfLife) => life.stages.find((each) => each.stage === stage && each.grade === "counted");
  if (growOut.plantsStanding !== null && variety.crop.lifeCycle !== "biennial") return [];
  const next: NextOfGrowOut[] = [];
  const later = seen("thinned") ?? seen("lifted") ?? seen("replanted");
  if (!seen("up") && !later && growOut.plantsStanding === null) next.push("count-up");
  else if (!later && growOut.plantsStanding === null) next.push("count-thinned");
  if (variety.crop.lifeCycle === "biennial" && !seen("flowering")) {
    const grown = growOut.sownLast !== null && addDays(growOut.sownLast, daysToRoots) <= today;
    if (seen("lifted") && !seen("replanted")) next.push("replant");
    else if (grown && !seen("lifted") && !seen("replanted")) next.push("count-lifted");
  }
  if (growOut.plantsStanding === null && (later || seen("up"))) next.push("count-standing");
  return next;
}

function atFlower({ growOut, variety, events, plants }: Read, life: LifeOfGrowOut, today: CivilDay): NextOfGrowOut[] {
  const flowering = life.stages.find((each) => each.stage === "flowering");
  const next: NextOfGrowOut[] = [];
  const near = isNear(flowering, today);
  const done = events.some((event) => event.kind === "flowering" && event.what === "last");
  if (near && !done && !variety.crop.clonal) {
    if (growOut.neighboursLookedOn === null && !events.some((event) => event.kind === "neighbour"))
      next.push("look-for-neighbours");
    next.push("rogue", "note-flowering");
  } else if (variety.crop.clonal) next.push("rogue");
  if (near && plants.length === 0) next.push("mark-plants");
  return next;
}

function isNear(flowering: LifeStage | undefined, today: CivilDay): boolean {
  if (!flowering) return false;
  if (flowering.grade === "counted" || flowering.days === null) return true;
  return addDays(flowering.days.first, -daysBeforeFlower) <= today;
}
