import { dayInWords } from "@/lib/display/dates";
import { counted, listed } from "@/lib/display/plurals";
import { grouped } from "@/lib/registry/change-set/grouped";
import type { SeasonRule, Waiting } from "@/lib/registry/season/waiting";
import { type ItemWords, itemWords, type NamedRecords } from "./item-words";

/** One line of the season: a thing that waits, or several that one letter settles. */
export interface SeasonLine extends ItemWords {
  readonly urgent: boolean;
}

/**
 * What one rule found, as lines. Holders to be asked are one line each, whatever they hold, for one letter asks about all of it; `apart`
 * lists their holdings one by one.
 */
export function seasonLines(
  rule: SeasonRule,
  items: readonly Waiting[],
  records: NamedRecords,
  apart = false,
): SeasonLine[] {
  if (rule === "holder-not-confirmed" && !apart) return holderLines(items, records);
  return items.map((item) => ({ ...itemWords(item, records), urgent: item.urgency === 0 }));
}

function holderLines(items: readonly Waiting[], records: NamedRecords): SeasonLine[] {
  const silent = items.flatMap((item) => (item.rule === "holder-not-confirmed" ? [item] : []));
  return [...grouped(silent, (item) => item.facts.holder.stewardId)].map(([stewardId, own]) => {
    const varieties = own.flatMap((item) => records.varieties.get(item.varietyId ?? "")?.name ?? []);
    const days = own.flatMap((item) => item.facts.holder.last?.day ?? []).sort();
    const last = days.at(-1);
    const more = varieties.length - 3;
    const names = listed([...varieties.slice(0, 3), ...(more > 0 ? [`${more} more`] : [])]);
    const href = `/season?rule=holder-not-confirmed&steward=${stewardId}`;
    return {
      key: `holder:${stewardId}`,
      subject: { words: own[0]?.facts.name ?? "A steward", href },
      variety: null,
      of: counted(varieties.length, "variety"),
      sentence: `${names}; ${last ? `last heard ${dayInWords(last)}` : "nothing was ever heard"}.`,
      hand: { words: "Write their words down", href },
      urgent: false,
    };
  });
}
