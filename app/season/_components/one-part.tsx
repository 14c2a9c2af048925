import Link from "next/link";
import { PageHead } from "@/components/frame";
import { counted } from "@/lib/display/plurals";
import type { SeasonProgress } from "@/lib/registry/season/progress";
import type { SeasonRecords } from "@/lib/registry/season/records";
import type { SeasonRule, Waiting } from "@/lib/registry/season/waiting";
import { seasonLines } from "../_words/lines";
import { progressWords } from "../_words/progress-words";
import { ruleWords } from "../_words/rule-words";
import { LeftOver } from "./left-over";
import { WaitingGroup } from "./waiting-group";

/** All that one rule found; of one steward where one is named. */
export function OneRule({
  rule,
  items,
  records,
  steward,
}: {
  rule: SeasonRule;
  items: readonly Waiting[];
  records: SeasonRecords;
  steward?: string;
}) {
  const own = items.filter((item) => {
    if (item.rule !== rule) return false;
    return !steward || (item.rule === "holder-not-confirmed" && item.facts.holder.stewardId === steward);
  });
  const lines = seasonLines(rule, own, records, steward !== undefined);
  const of = steward ? (records.names.get(steward) ?? "A steward") : null;
  return (
    <div className="sheet stack">
      <PageHead title={of ?? ruleWords[rule].title} kind={<Link href="/season">Season</Link>} />
      <WaitingGroup rule={rule} lines={lines} settings={records.settings} />
    </div>
  );
}

/** Exactly what a progress bar counts as left, or as overdue. */
export function OneProgress({
  progress,
  late,
  records,
}: {
  progress: SeasonProgress;
  late: boolean;
  records: SeasonRecords;
}) {
  const words = progressWords(progress);
  return (
    <div className="sheet stack">
      <PageHead
        title={late ? `${counted(progress.overdue.length, "lot")} overdue` : words.left}
        kind={<Link href="/season">Season</Link>}
      >
        <p>{words.sentence}.</p>
      </PageHead>
      <LeftOver ids={late ? progress.overdue : progress.left} records={records} />
    </div>
  );
}
