import type { Metadata } from "next";
import { PageHead, Section } from "@/components/frame";
import { Figure } from "@/components/numbers";
import { Way } from "@/components/ui/offered";
import { calculations } from "@/lib/schemas/calculations";
import { current } from "../_session/current";
import { subjects } from "./_words/subjects";
import styles from "./methods.module.css";

export const metadata: Metadata = { title: "Methods" };

export default async function Methods() {
  await current();
  const byName = new Map(calculations.map((each) => [each.name, each]));
  return (
    <div className="sheet stack">
      <PageHead
        title="Methods"
        kind="Registry"
        figure={
          <Figure value={`${calculations.length} calculations`}>
            stand behind every number here. Each says what it answers and when to doubt it, by which formula and from
            where, and can be tried.
          </Figure>
        }
      />
      <p className="measure">
        Some read <Way href="/methods/tables">published tables</Way>: what stands in them, from where, and your own
        values in their place.
      </p>
      {subjects.map(({ id, title, names }) => (
        <Section key={id} id={id} title={title}>
          <dl className={styles.list}>
            {names.map((name) => {
              const each = byName.get(name);
              return each ? (
                <div key={name} className={styles.each}>
                  <dt>
                    <Way href={`/methods/${name}`}>{each.title}</Way>
                  </dt>
                  <dd>{each.answers}</dd>
                </div>
              ) : null;
            })}
          </dl>
        </Section>
      ))}
    </div>
  );
}
