import type { LineStage } from "@/components/grow-out-line";
import { dateInWords } from "@/lib/display/dates";
import { counted } from "@/lib/display/plurals";
import type { LifeStage, StageOfLife } from "@/lib/registry/grow-outs/life-of-grow-out";
import { addDays } from "@/lib/science/dates/civil-day";

const names: Readonly<Record<StageOfLife, string>> = {
  planned: "Planned",
  sown: "Sown",
  up: "Up",
  thinned: "Thinned",
  lifted: "Roots lifted",
  winter: "Winter",
  replanted: "Replanted",
  flowering: "Flowering",
  harvest: "Harvest",
  ended: "Ended",
};

/** A stage of life as the line shows it: its name, its days and what was counted. `relative`: days are counted from a sowing to come. */
export function stageInWords(stage: LifeStage, relative: boolean): LineStage {
  const { id, plants } = stage;
  const { grade, days } = relative ? drawnDays(stage) : stage;
  return {
    id,
    name: names[stage.stage],
    when: whenOf(stage),
    note:
      plants === null
        ? undefined
        : stage.stage === "harvest"
          ? counted(plants, "seed parent")
          : counted(plants, "plant"),
    grade,
    first: days?.first ?? null,
    last: days?.last ?? null,
  };
}

/** Stands in for a day of sowing that nobody knows yet; only days counted from it are shown. */
export const dayNought = "2001-01-01";

/** Days after a sowing that has no day yet are drawn from a day that stands in for it; the sowing itself stays open. */
function drawnDays({ stage, grade, days, afterSowing }: LifeStage): Pick<LifeStage, "grade" | "days"> {
  if (afterSowing !== null) {
    const span = { first: addDays(dayNought, afterSowing.min), last: addDays(dayNought, afterSowing.max) };
    return { grade: "assumed", days: span };
  }
  return stage === "sown" && days === null ? { grade, days: { first: dayNought, last: dayNought } } : { grade, days };
}

/** Whether a life has no day yet at all, so that its line counts days from a sowing to come. */
export function withoutDays(stages: readonly LifeStage[]): boolean {
  return stages.every((stage) => stage.days === null) && stages.some((stage) => stage.afterSowing !== null);
}

function whenOf({ stage, grade, on, days, afterSowing }: LifeStage): string {
  if (on !== null) return dateInWords(on);
  if (stage === "planned") return "on record";
  if (afterSowing !== null) return `${afterSowing.min} to ${afterSowing.max} days after sowing`;
  if (days === null)
    return grade === "counted" ? "day not written" : stage === "sown" ? "not yet, or not written" : "nothing written";
  const from = monthOf(days.first);
  const to = monthOf(days.last);
  const span = from === to ? from : `${from} to ${to}`;
  return stage === "winter" ? span : `expected ${span}`;
}

/** What is expected is never said to the day. */
function monthOf(day: string): string {
  return dateInWords(day.slice(0, 7));
}

/** What a crop's life cycle asks of a grow-out, in a sentence; null for an annual. */
export function lifeCycleInWords({
  lifeCycle,
  vernalisation,
}: {
  readonly lifeCycle: string | null;
  readonly vernalisation: string | null;
}): string | null {
  const cold = vernalisation !== null && !/^none/.test(vernalisation) ? ` Cold that it needs: ${vernalisation}.` : "";
  if (lifeCycle === "biennial")
    return `It flowers in its second year. Roots that are lifted are kept over the winter and replanted, often on a second plot; where they stand the winter out, nothing is lifted.${cold}`;
  if (lifeCycle === "perennial")
    return `It lives for years: harvest follows harvest, each its own lot, until it is ended.${cold}`;
  if (lifeCycle === null) return "Whether its crop lives one year or more is not known here.";
  return cold === "" ? null : cold.trim();
}
