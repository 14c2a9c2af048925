import Link from "next/link";
import { Section } from "@/components/frame";
import { dateInWords } from "@/lib/display/dates";
import type { VarietyRead } from "@/lib/registry/varieties/read-variety";
import styles from "./told.module.css";

/** Other names and spellings. */
export function NamesSection({ read: { variety, otherNames } }: { read: VarietyRead }) {
  return (
    <Section id="names" title="Other names" aside={<Link href={`/varieties/${variety.id}/add/name`}>Add a name</Link>}>
      {otherNames.length === 0 ? (
        <p className="quiet">None is on record.</p>
      ) : (
        <ul className={styles.plain}>
          {otherNames.map((name) => (
            <li key={name.id}>
              {name.name}
              <span className={styles.off}>
                {name.kind === "other" ? "" : `, ${name.kind}`}
                {name.source ? `, ${name.source}` : ""}
              </span>
            </li>
          ))}
        </ul>
      )}
    </Section>
  );
}

/** Strains: long keepings that may have drifted. */
export function StrainsSection({ read: { variety, strains, people } }: { read: VarietyRead }) {
  return (
    <Section
      id="strains"
      title="Strains"
      aside={<Link href={`/varieties/${variety.id}/add/strain`}>Add a strain</Link>}
    >
      {strains.length === 0 ? (
        <p className="quiet">No strain is told apart.</p>
      ) : (
        <dl className={styles.lines}>
          {strains.map((strain) => {
            const keeper = strain.stewardId === null ? null : (people.get(strain.stewardId) ?? "a steward");
            const years = [
              strain.keptFrom ? `from ${dateInWords(strain.keptFrom)}` : "",
              strain.keptTo ? `until ${dateInWords(strain.keptTo)}` : "",
            ]
              .filter(Boolean)
              .join(" ");
            const facts = [keeper ? `kept by ${keeper}` : "", strain.place, years, strain.relation]
              .filter(Boolean)
              .join(", ");
            return (
              <div key={strain.id} className={styles.line}>
                <dt>{strain.name}</dt>
                <dd>
                  {facts || "nothing more is known"}
                  {strain.difference ? <p>{strain.difference}</p> : null}
                  {strain.note ? <p className={styles.off}>{strain.note}</p> : null}
                </dd>
              </div>
            );
          })}
        </dl>
      )}
    </Section>
  );
}
