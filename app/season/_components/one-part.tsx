import Link from "next/link";
import { PageHead, Parts, partOf } from "@/components/frame";
import { counted } from "@/lib/display/plurals";
import type { SeasonProgress } from "@/lib/registry/season/progress";
import type { SeasonRecords } from "@/lib/registry/season/records";
import type { SeasonRule, Waiting } from "@/lib/registry/season/waiting";
import { seasonLines } from "../_words/lines";
import { progressWords } from "../_words/progress-words";
import { ruleWords } from "../_words/rule-words";
import { LeftOver } from "./left-over";
import { WaitingGroup } from "./waiting-group";

/** So many lines are shown at once; of thousands the rest stands in further parts. */
const shownAtOnce = 60;

/** All that one rule found, in parts; of one steward where one is named. */
export function OneRule({
  rule,
  items,
  records,
  steward,
  part: asked,
}: {
  rule: SeasonRule;
  items: readonly Waiting[];
  records: SeasonRecords;
  steward?: string;
  part?: string;
}) {
  const own = items.filter((item) => {
    if (item.rule !== rule) return false;
    return !steward || (item.rule === "holder-not-confirmed" && item.facts.holder.stewardId === steward);
  });
  // A line to a holder may stand for many items: these few are put into words whole.
  const several = rule === "holder-not-confirmed" && !steward;
  const all = several ? seasonLines(rule, own, records) : null;
  const count = all?.length ?? own.length;
  const { part, parts, from, to } = partOf(asked, count, shownAtOnce);
  const lines = all?.slice(from, to) ?? seasonLines(rule, own.slice(from, to), records, steward !== undefined);
  const of = steward ? (records.names.get(steward) ?? "A steward") : null;
  return (
    <div className="sheet stack">
      <PageHead title={of ?? ruleWords[rule].title} kind={<Link href="/season">Season</Link>} />
      <WaitingGroup
        rule={rule}
        lines={lines}
        settings={records.settings}
        count={count}
        urgent={own.some((item) => item.urgency === 0)}
        inParts
      />
      <Parts
        part={part}
        parts={parts}
        of="what waits"
        href={(each) => `/season?rule=${rule}${steward ? `&steward=${steward}` : ""}&part=${each}`}
      />
    </div>
  );
}

/** Exactly what a progress bar counts as left, or as overdue, in parts. */
export function OneProgress({
  progress,
  late,
  records,
  part: asked,
}: {
  progress: SeasonProgress;
  late: boolean;
  records: SeasonRecords;
  part?: string;
}) {
  const words = progressWords(progress);
  const ids = late ? progress.overdue : progress.left;
  const { part, parts, from, to } = partOf(asked, ids.length, shownAtOnce);
  return (
    <div className="sheet stack">
      <PageHead
        title={late ? `${counted(progress.overdue.length, "lot")} overdue` : words.left}
        kind={<Link href="/season">Season</Link>}
      >
        <p>{words.sentence}.</p>
      </PageHead>
      <LeftOver ids={ids.slice(from, to)} records={records} />
      <Parts
        part={part}
        parts={parts}
        of="what is left"
        href={(each) => `/season?left=${progress.key}${late ? "&only=overdue" : ""}&part=${each}`}
      />
    </div>
  );
}
