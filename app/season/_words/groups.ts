import type { SeasonPlace } from "@/lib/registry/season/records";
import { type SeasonRule, seasonRuleNames, type Waiting } from "@/lib/registry/season/waiting";
import type { NamedRecords } from "./item-words";
import { type SeasonLine, seasonLines } from "./lines";

/** What one rule found, with the place where the hand goes. */
export interface SeasonGroup {
  readonly rule: SeasonRule;
  readonly place: SeasonPlace;
  readonly lines: readonly SeasonLine[];
}

/** The places of the season in the order of the page, with what is said where nothing waits. */
export const seasonPlaces: readonly { place: SeasonPlace; title: string; rest: string }[] = [
  { place: "field", title: "Field", rest: "Nothing has to be grown out." },
  { place: "shed", title: "Shed", rest: "No jar and no test waits." },
  { place: "desk", title: "Desk", rest: "Nobody waits for a letter." },
];

/** The groups of the season: those with something that cannot wait first, then in the order of the rules. */
export function seasonGroups(items: readonly Waiting[], records: NamedRecords): SeasonGroup[] {
  const groups = seasonRuleNames.flatMap((rule): SeasonGroup[] => {
    const own = items.filter((item) => item.rule === rule);
    const [first] = own;
    return first ? [{ rule, place: first.place, lines: seasonLines(rule, own, records) }] : [];
  });
  const urgent = (group: SeasonGroup) => (group.lines.some((line) => line.urgent) ? 0 : 1);
  return groups
    .map((group, order) => ({ group, order }))
    .sort((a, b) => urgent(a.group) - urgent(b.group) || a.order - b.order)
    .map(({ group }) => group);
}

/** How many things wait in each place. */
export function countsByPlace(groups: readonly SeasonGroup[]): Record<SeasonPlace, number> {
  const counts = { desk: 0, shed: 0, field: 0 };
  for (const { place, lines } of groups) counts[place] += lines.length;
  return counts;
}
