import Link from "next/link";
import { Explained } from "@/components/numbers";
import { SeedCoat } from "@/components/seed-coat";
import { counted } from "@/lib/display/plurals";
import type { SeasonRecords } from "@/lib/registry/season/records";
import type { SeasonRule, Waiting } from "@/lib/registry/season/waiting";
import { storedSeedCoat } from "@/lib/schemas/varieties/seed-coat";
import { type ItemWords, itemWords } from "../_words/item-words";
import { ruleWords } from "../_words/rule-words";
import styles from "./waiting-group.module.css";

/** What one rule found: the rule with its settings to open, then each thing with its sentence and where the hand goes. */
export function WaitingGroup({
  rule,
  items,
  records,
  most,
}: {
  rule: SeasonRule;
  items: readonly Waiting[];
  records: SeasonRecords;
  /** how many are shown before "all of them"; null: all */
  most: number | null;
}) {
  const { title, noun, explanation } = ruleWords[rule];
  const shown = most === null ? items : items.slice(0, most);
  return (
    <div className={styles.group}>
      <Explained explanation={explanation(records.settings, items.length)}>
        <span className={styles.title}>{title}</span>{" "}
        <span className={styles.count} data-urgent={items.some((item) => item.urgency === 0) || undefined}>
          {items.length}
        </span>
      </Explained>
      <ul className={styles.items}>
        {shown.map((item) => {
          const words = itemWords(item, records);
          return <WaitingItem key={words.key} words={words} urgent={item.urgency === 0} />;
        })}
      </ul>
      {shown.length < items.length ? (
        <p className={styles.all}>
          <Link href={`/season?rule=${rule}`}>All {counted(items.length, noun)}</Link>
        </p>
      ) : null}
    </div>
  );
}

function WaitingItem({ words, urgent }: { words: ItemWords; urgent: boolean }) {
  const { subject, variety, sentence, hand } = words;
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
        </Link>{" "}
        {sentence}.
      </p>
      <Link href={hand.href} className={styles.hand}>
        {hand.words}
        <span className="heard">, {subject.words}</span>
      </Link>
    </li>
  );
}
