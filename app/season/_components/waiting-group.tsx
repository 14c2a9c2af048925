import Link from "next/link";
import { Explained } from "@/components/numbers";
import { SeedCoat } from "@/components/seed-coat";
import { Way } from "@/components/ui/offered";
import { wholeNumber } from "@/lib/display/numbers";
import type { SeasonRule } from "@/lib/registry/season/waiting";
import type { Settings } from "@/lib/schemas/settings";
import { storedSeedCoat } from "@/lib/schemas/varieties/seed-coat";
import { OfLots } from "../../_session/of-record";
import type { SeasonLine } from "../_words/lines";
import { ruleWords } from "../_words/rule-words";
import styles from "./waiting-group.module.css";

/** What one rule found: the rule with its settings to open, then each thing with its sentence and where the hand goes. */
export function WaitingGroup({
  rule,
  lines,
  settings,
  count = lines.length,
  urgent = lines.some((line) => line.urgent),
  inParts = false,
}: {
  rule: SeasonRule;
  /** those that are shown: all, or the first of them */
  lines: readonly SeasonLine[];
  settings: Settings;
  /** how many there are, shown or not, and whether one cannot wait */
  count?: number;
  urgent?: boolean;
  /** the rest stands in further parts of this page */
  inParts?: boolean;
}) {
  const { title, explanation } = ruleWords[rule];
  return (
    <div className={styles.group}>
      <Explained explanation={explanation(settings, count)}>
        <span className={styles.title}>{title}</span>{" "}
        <span className={styles.count} data-urgent={urgent || undefined}>
          {wholeNumber(count)}
        </span>
      </Explained>
      <OfLots ids={lines.flatMap((line) => /^\/lots\/([\w-]{36})/.exec(line.subject.href)?.[1] ?? [])}>
        <ul className={styles.items}>
          {lines.map((line) => (
            <WaitingLine key={line.key} line={line} />
          ))}
        </ul>
      </OfLots>
      {lines.length < count && !inParts ? (
        <p className={styles.all}>
          <span className="on-paper">and {wholeNumber(count - lines.length)} more</span>
          <Link href={`/season?rule=${rule}`} className="not-on-paper">
            All {wholeNumber(count)}
            <span className="heard">: {title}</span>
          </Link>
        </p>
      ) : null}
    </div>
  );
}

function WaitingLine({ line }: { line: SeasonLine }) {
  const { subject, variety, of, sentence, hand, urgent } = line;
  return (
    <li className={styles.item} data-urgent={urgent || undefined}>
      <span className={styles.mark}>
        {variety ? (
          <SeedCoat name={variety.name} crop={variety.crop} coat={storedSeedCoat(variety.seedCoat)} size={26} />
        ) : null}
      </span>
      <p className={styles.words}>
        <Link href={subject.href} className={styles.subject}>
          {subject.words}
        </Link>
        {of ? <span className={styles.of}>, {of}</span> : null}: {sentence}
      </p>
      <Way href={hand.href} className={styles.hand}>
        {hand.words}
        <span className="heard">, {subject.words}</span>
      </Way>
    </li>
  );
}
