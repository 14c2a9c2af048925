import Link from "next/link";
import { Section } from "@/components/frame";
import { Way } from "@/components/ui/offered";
import { counted } from "@/lib/display/plurals";
import type { VarietyRead } from "@/lib/registry/varieties/read-variety";
import { itemWords } from "../../../season/_words/item-words";
import { ruleWords } from "../../../season/_words/rule-words";
import styles from "./waits-section.module.css";

const shownAtFirst = 6;
/** A variety of hundreds of jars has hundreds of things waiting: the season lists them all. */
const shownAtMost = 36;

/** What of this variety waits for a hand; nothing where nothing does. */
export function WaitsSection({ read }: { read: VarietyRead }) {
  const { waiting, variety, crop, lots } = read;
  if (waiting.length === 0) return null;
  const own = {
    id: variety.id,
    name: variety.name,
    nameKey: variety.nameKey,
    seedCoat: variety.seedCoat,
    aim: variety.aim,
    crop,
  };
  const records = { varieties: new Map([[variety.id, own]]), lots, names: read.people };
  const item = (each: (typeof waiting)[number]) => {
    const words = itemWords(each, records);
    return (
      <li key={words.key} className={styles.item}>
        <p className={styles.words}>
          <span className={styles.rule} data-urgent={each.urgency === 0 || undefined}>
            {ruleWords[each.rule].title}
          </span>{" "}
          {each.lotId === null ? null : (
            <>
              <Link href={words.subject.href}>{words.subject.words}</Link>:{" "}
            </>
          )}
          {words.sentence}
        </p>
        <Way href={words.hand.href} className={styles.hand}>
          {words.hand.words}
          <span className="heard">, {words.subject.words}</span>
        </Way>
      </li>
    );
  };
  return (
    <Section id="waits" title="What waits for a hand" aside={counted(waiting.length, "thing")}>
      <ul className={styles.items}>{waiting.slice(0, shownAtFirst).map(item)}</ul>
      {waiting.length > shownAtFirst ? (
        <details>
          <summary>{counted(waiting.length - shownAtFirst, "more thing", "more things")}</summary>
          <ul className={styles.items}>{waiting.slice(shownAtFirst, shownAtMost).map(item)}</ul>
          {waiting.length > shownAtMost ? (
            <p>
              and {counted(waiting.length - shownAtMost, "more", "more")}, all in <Link href="/season">the season</Link>
            </p>
          ) : null}
        </details>
      ) : null}
    </Section>
  );
}
