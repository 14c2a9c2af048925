import Link from "next/link";
import { Section } from "@/components/frame";
import { SeedCoat } from "@/components/seed-coat";
import { dateInWords, dayInWords } from "@/lib/display/dates";
import { counted } from "@/lib/display/plurals";
import type { RunningTest } from "@/lib/registry/germination-tests/running-tests";
import { storedSeedCoat } from "@/lib/schemas/varieties/seed-coat";
import styles from "./running-list.module.css";

/** The tests that lie in their damp cloth now, the one longest due first. */
export function RunningList({ running }: { running: readonly RunningTest[] }) {
  if (running.length === 0) return null;
  return (
    <Section id="running" title="Lying in the cloth now" aside={counted(running.length, "test")}>
      <ul className={styles.list}>
        {running.map((test) => (
          <li key={test.id} className={styles.item}>
            <SeedCoat
              name={test.variety.name}
              coat={storedSeedCoat(test.variety.seedCoat)}
              crop={test.crop.key}
              size={28}
            />
            <span>
              <Link href={`/tests/${test.id}#count`}>{test.name}</Link>
              <span className={styles.says}>
                {" "}
                {test.totals.counted && test.totals.lastDay !== null
                  ? `counted on day ${test.totals.lastDay}`
                  : `set up ${dateInWords(test.on)}, not counted yet`}
                , {counted(test.totals.left, "seed")} left
              </span>
            </span>
            <span className={test.isDue ? "waits" : styles.says}>{dueWords(test)}</span>
          </li>
        ))}
      </ul>
    </Section>
  );
}

function dueWords({ due, isDue }: RunningTest): string {
  if (!due) return "no last day set";
  const day =
    due.first === due.last ? dayInWords(due.first) : `between ${dayInWords(due.first)} and ${dayInWords(due.last)}`;
  return isDue ? `last count due, ${day}` : `last count ${day}`;
}
