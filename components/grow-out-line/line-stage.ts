import type { Grade } from "@/components/doubt/grade";
import type { CivilDay } from "@/lib/science/dates/civil-day";

/** One stage of a life as the line draws it. */
export interface LineStage {
  readonly id: string;
  readonly name: string;
  /** its days in words, or that they are not known */
  readonly when: string;
  /** what was counted, or what it rests on */
  readonly note?: string;
  /** counted: on record; assumed: to be expected; unknown: nobody knows */
  readonly grade: Grade;
  readonly first: CivilDay | null;
  readonly last: CivilDay | null;
}
