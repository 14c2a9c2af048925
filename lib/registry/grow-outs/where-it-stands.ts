import { addDays, addYears, type CivilDay } from "@/lib/science/dates/civil-day";

/** What is known of a grow-out's time. */
export interface GrowOutInTime {
  readonly sownFirst: CivilDay | null;
  readonly sownLast: CivilDay | null;
  readonly endedOn: string | null;
  readonly outcome: string | null;
  /** annual, biennial, perennial; null not known */
  readonly lifeCycle: string | null;
  /** most days from sowing to ripe seed, by the crop */
  readonly daysToSeedMax: number | null;
  /** anything is on record that only a grow-out that was begun can have: plants, a harvest, something seen */
  readonly begun: boolean;
  /** the last day on which anything of it is on record */
  readonly lastSeen: CivilDay | null;
}

export interface WhereItStands {
  readonly stage: "planned" | "standing" | "over";
  /** somebody wrote it; else it follows from the days */
  readonly said: boolean;
}

/** Days from sowing to ripe seed where the crop does not say. */
const usualDays = { annual: 200, biennial: 480 } as const;

/** Seed is brought in, dried and written down within this many days of being ripe. */
const daysOfGrace = 120;

/** A perennial of which nothing was written for so many years is not taken to stand. */
const silentYears = 3;

/**
 * Whether a grow-out is planned, stands, or is over. What somebody wrote goes first: its end, its outcome, its sowing. Else an annual or biennial
 * is taken to be over when seed has long been ripe, a perennial when nothing was written of it for three years, and one without a day of
 * sowing when the last that is known of it lies in an earlier year.
 */
export function whereItStands(growOut: GrowOutInTime, today: CivilDay): WhereItStands {
  const { sownFirst, sownLast, endedOn, outcome, begun, lastSeen, lifeCycle, daysToSeedMax } = growOut;
  if (endedOn !== null || outcome !== null) return { stage: "over", said: true };
  if (sownFirst === null && !begun) return { stage: "planned", said: true };
  if (sownFirst !== null && sownFirst > today && !begun) return { stage: "planned", said: true };
  const latest =
    [sownLast, lastSeen]
      .filter((day) => day !== null)
      .sort()
      .at(-1) ?? null;
  if (latest === null) return { stage: "standing", said: false };
  if (lifeCycle === "perennial") {
    const heard = addYears(latest, silentYears) >= today;
    return { stage: heard ? "standing" : "over", said: false };
  }
  if (sownLast === null) return { stage: latest.slice(0, 4) < today.slice(0, 4) ? "over" : "standing", said: false };
  const days = daysToSeedMax ?? (lifeCycle === "biennial" ? usualDays.biennial : usualDays.annual);
  return { stage: addDays(sownLast, days + daysOfGrace) < today ? "over" : "standing", said: false };
}
