import { grouped } from "../change-set/grouped";
import type { SeasonPlace, SeasonRecords } from "./records";
import { balanceUnknown } from "./rules/balance-unknown";
import { countDayCome } from "./rules/count-day-come";
import { failedGrowOut } from "./rules/failed-grow-out";
import { germinationBelowLine } from "./rules/germination-below-line";
import { holderNotConfirmed } from "./rules/holder-not-confirmed";
import { narrowGrowOut } from "./rules/narrow-grow-out";
import { onePlaceOnly } from "./rules/one-place-only";
import { openMatters } from "./rules/open-matter";
import { pastUsualLife } from "./rules/past-usual-life";
import { perhapsOneLot } from "./rules/perhaps-one-lot";
import { plantsToChoose } from "./rules/plants-to-choose";
import { promiseOverdue } from "./rules/promise-overdue";
import { quarantineLong } from "./rules/quarantine-long";
import { replyDue } from "./rules/reply-due";
import { standingApart } from "./rules/standing-apart";
import { testOverdue } from "./rules/test-overdue";

/** Every rule of the season, in the order in which a page names them. */
export const seasonRules = {
  "germination-below-line": germinationBelowLine,
  "past-usual-life": pastUsualLife,
  "failed-grow-out": failedGrowOut,
  "narrow-grow-out": narrowGrowOut,
  "plants-to-choose": plantsToChoose,
  "count-day-come": countDayCome,
  "test-overdue": testOverdue,
  "standing-apart": standingApart,
  "balance-unknown": balanceUnknown,
  "one-place-only": onePlaceOnly,
  "holder-not-confirmed": holderNotConfirmed,
  "quarantine-long": quarantineLong,
  "promise-overdue": promiseOverdue,
  "reply-due": replyDue,
  "perhaps-one-lot": perhapsOneLot,
  "open-matter": openMatters,
} as const;

export type SeasonRule = keyof typeof seasonRules;

/** What waits for a hand: an item of any rule. */
export type Waiting = ReturnType<(typeof seasonRules)[SeasonRule]>[number];

export const seasonRuleNames = Object.keys(seasonRules) as SeasonRule[];

// The rules look at the records alone: what waits is worked out once for them.
const shelf = new WeakMap<SeasonRecords, readonly Waiting[]>();

/** All that waits, most urgent first, then in the order of the rules. */
export function waitingItems(records: SeasonRecords): readonly Waiting[] {
  const kept = shelf.get(records);
  if (kept) return kept;
  const all = seasonRuleNames.flatMap((rule): Waiting[] => seasonRules[rule](records));
  // Sorting keeps the order of those that are as urgent.
  all.sort((a, b) => a.urgency - b.urgency);
  shelf.set(records, all);
  return all;
}

/** The same by the place where the hand goes. */
export function byPlace(items: readonly Waiting[]): Record<SeasonPlace, Waiting[]> {
  const groups = grouped(items, (item) => item.place);
  return { desk: groups.get("desk") ?? [], shed: groups.get("shed") ?? [], field: groups.get("field") ?? [] };
}

/** How many things wait for each variety. */
export function waitingByVariety(items: readonly Waiting[]): Map<string, number> {
  const counts = new Map<string, number>();
  for (const { varietyId } of items) if (varietyId !== null) counts.set(varietyId, (counts.get(varietyId) ?? 0) + 1);
  return counts;
}
