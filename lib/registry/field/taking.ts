import type { Actor } from "@/lib/access/actor";
import type { Engine, Location, Transaction } from "@/lib/db";
import type { FieldRecord } from "@/lib/schemas/field/field-records";
import { type CivilDay, dayFromNumber } from "@/lib/science/dates/civil-day";
import type { FuzzyDate } from "@/lib/science/dates/fuzzy-date";
import { type Refusal, refusal } from "@/lib/science/outcome";
import type { RowOf } from "../change-set/records";
import type { ChangeWriter } from "../change-set/writer";
import { dayFaults } from "../grow-outs/day-faults";
import type { FromPhone } from "../grow-outs/field-entry";
import type { FieldGround } from "./field-ground";

/** What the taking of records works with, inside one change set. */
export interface Taking {
  readonly change: ChangeWriter;
  readonly tx: Transaction;
  readonly engine: Engine;
  /** where the pictures lie */
  readonly location: Location;
  readonly actor: Actor;
  /** the registry's clock */
  readonly now: Date;
  readonly ground: FieldGround;
}

/** How a record is taken. */
export interface HowTaken {
  /** false: a person said that it stands, though a rule speaks against it */
  readonly judged: boolean;
  /** the day that a person put in the place of the phone's */
  readonly on?: CivilDay;
}

/** The columns by which a row tells of the phone that it was made on. */
export function fromPhone(record: FieldRecord): FromPhone {
  const { recordedAt, recordedOffset, deviceId, sequence } = record;
  return { recordedAt, recordedOffset, deviceId, deviceSequence: sequence };
}

/** A day as the tables keep it. */
export function seenOn(record: FieldRecord, { on = record.on }: HowTaken) {
  return { on, onFirst: on, onLast: on };
}

/** A day as dates of records are read. */
export function fuzzyDay(day: CivilDay): FuzzyDate {
  return { text: day, first: day, last: day, approximate: false, uncertain: false, precision: "day" };
}

/** The day that it is now at the place of a phone that is so many minutes ahead of UTC. */
export function dayAt(now: Date, offsetMinutes: number): CivilDay {
  return dayFromNumber(Math.floor((now.getTime() / 60_000 + offsetMinutes) / 1440));
}

/**
 * What is wrong with any record beside its grow-out: a day that has not come where the phone is, before the sowing, or after the grow-out was over;
 * a hand that nobody here has.
 */
export async function commonFaults(
  { ground, now }: Taking,
  record: FieldRecord,
  growOut: RowOf<"GrowOut">,
  how: HowTaken,
): Promise<Refusal[]> {
  if (!how.judged) return [];
  const seen = seenOn(record, how);
  const { sown, sownFirst, endedOn } = growOut;
  const faults = dayFaults(seen, { sown, sownFirst, today: dayAt(now, record.recordedOffset) }, ["on"]);
  if (endedOn !== null && seen.on > endedOn) {
    const needed = "write the day in the field, or put the end of the grow-out right";
    faults.push(refusal("over", ["on"], seen.on, `is after the grow-out was over (${endedOn})`, needed));
  }
  if (record.stewardId !== null && !(await ground.isSteward(record.stewardId))) {
    const needed = "say that it stands without a name, or set it aside";
    faults.push(refusal("unknown-steward", ["stewardId"], record.stewardId, "is no steward here", needed));
  }
  return faults;
}

/** Whose hand a record is, where that is somebody here. */
export async function handOf({ ground }: Taking, { stewardId }: FieldRecord): Promise<string | null> {
  return stewardId !== null && (await ground.isSteward(stewardId)) ? stewardId : null;
}
