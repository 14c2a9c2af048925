import Link from "next/link";
import { Section } from "@/components/frame";
import { Way } from "@/components/ui/offered";
import type { VarietyRead } from "@/lib/registry/varieties/read-variety";
import styles from "./told.module.css";

/** What the variety should look like: in words, and line by line with what is off-type. */
export function TypeSection({ read: { variety, traits } }: { read: VarietyRead }) {
  return (
    <Section
      id="type"
      title="Type"
      aside={
        <>
          <Link href={`/varieties/${variety.id}/traits`}>Traits to score</Link>,{" "}
          <Way href={`/varieties/${variety.id}/add/trait`}>Add a line</Way>
        </>
      }
    >
      <div className={styles.told}>
        {variety.typeDescription ? <p className={styles.words}>{variety.typeDescription}</p> : null}
        {variety.typeDescription === null && traits.length === 0 ? (
          <p className="quiet">
            Nobody has written down what it should look like. Without it no plant is off-type, and the next keeper
            cannot rogue it.
          </p>
        ) : null}
        {traits.length > 0 ? (
          <dl className={styles.lines}>
            {traits.map((line) => (
              <div key={line.id} className={styles.line}>
                <dt>
                  {line.trait}
                  {line.part && line.part !== line.trait ? `, ${line.part}` : ""}
                </dt>
                <dd>
                  {line.allowed}
                  {line.offType ? <p className={styles.off}>Off-type: {line.offType}</p> : null}
                  <Way href={`/varieties/${variety.id}/correct/${line.id}`} className={`${styles.off} not-on-paper`}>
                    Correct<span className="heard"> the line about {line.trait}</span>
                  </Way>
                </dd>
              </div>
            ))}
          </dl>
        ) : null}
      </div>
    </Section>
  );
}
