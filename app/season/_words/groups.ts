import { grouped } from "@/lib/registry/change-set/grouped";
import type { SeasonPlace } from "@/lib/registry/season/records";
import { type SeasonRule, seasonRuleNames, type Waiting } from "@/lib/registry/season/waiting";
import type { NamedRecords } from "./item-words";
import { type SeasonLine, seasonLines } from "./lines";

/** What one rule found, with the place where the hand goes: how many lines it makes, how many cannot wait, and the first of them. */
export interface SeasonGroup {
  readonly rule: SeasonRule;
  readonly place: SeasonPlace;
  readonly count: number;
  readonly urgent: number;
  readonly lines: readonly SeasonLine[];
}

/** The places of the season in the order of the page, with what is said where nothing waits. */
export const seasonPlaces: readonly { place: SeasonPlace; title: string; rest: string }[] = [
  { place: "field", title: "Field", rest: "Nothing has to be grown out." },
  { place: "shed", title: "Shed", rest: "No jar and no test waits." },
  { place: "desk", title: "Desk", rest: "Nobody waits for a letter." },
];

/**
 * The groups of the season: those with something that cannot wait first, then in the order of the rules. Only the first `most` lines of each
 * are put into words: at 2,000 lots there are thousands.
 */
export function seasonGroups(
  items: readonly Waiting[],
  records: NamedRecords,
  most = Number.POSITIVE_INFINITY,
): SeasonGroup[] {
  const byRule = grouped(items, (item) => item.rule);
  const groups = seasonRuleNames.flatMap((rule): SeasonGroup[] => {
    const own = byRule.get(rule) ?? [];
    const [first] = own;
    if (!first) return [];
    // Several items of one holder make one line; of the other rules each makes its own.
    const several = rule === "holder-not-confirmed";
    const lines = seasonLines(rule, several ? own : own.slice(0, most), records);
    const count = several ? lines.length : own.length;
    const urgent = own.filter((item) => item.urgency === 0).length;
    return [{ rule, place: first.place, count, urgent, lines: lines.slice(0, most) }];
  });
  const rest = (group: SeasonGroup) => (group.urgent > 0 ? 0 : 1);
  return groups.sort((a, b) => rest(a) - rest(b));
}

/** How many things wait in each place. */
export function countsByPlace(groups: readonly SeasonGroup[]): Record<SeasonPlace, number> {
  const counts = { desk: 0, shed: 0, field: 0 };
  for (const { place, count } of groups) counts[place] += count;
  return counts;
}
