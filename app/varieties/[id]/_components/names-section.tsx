import Link from "next/link";
import { Section } from "@/components/frame";
import { Way } from "@/components/ui/offered";
import { dateInWords } from "@/lib/display/dates";
import type { VarietyRead } from "@/lib/registry/varieties/read-variety";
import { relationInWords } from "../../_words/strain-words";
import styles from "./told.module.css";

/** Other names and spellings, and varieties that are possibly the same. */
export function NamesSection({ read: { variety, otherNames, possiblySame, ofCrop } }: { read: VarietyRead }) {
  return (
    <Section
      id="names"
      title="Other names"
      aside={
        <>
          <Way href={`/varieties/${variety.id}/add/name`}>Add a name</Way>
          {ofCrop.length === 0 ? null : (
            <Way before=", " href={`/varieties/${variety.id}/add/same`}>
              Possibly the same as …
            </Way>
          )}
        </>
      }
    >
      {possiblySame.map((other) => (
        <p key={other.varietyId} className="measure">
          Possibly the same as <Link href={`/varieties/${other.varietyId}`}>{other.name}</Link>
          {other.says ? `: ${other.says}` : ""}. It is only told; nothing is joined by it.
        </p>
      ))}
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

/** Strains: long keepings that may have drifted, and what each is to the variety. */
export function StrainsSection({ read: { variety, strains, people } }: { read: VarietyRead }) {
  return (
    <Section id="strains" title="Strains" aside={<Way href={`/varieties/${variety.id}/add/strain`}>Add a strain</Way>}>
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
            const facts = [keeper ? `kept by ${keeper}` : "", strain.place, years, relationInWords(strain.relation)]
              .filter(Boolean)
              .join(", ");
            return (
              <div key={strain.id} className={styles.line}>
                <dt>
                  <Way href={`/varieties/${variety.id}/strains/${strain.id}`} otherwise={strain.name}>
                    {strain.name}
                  </Way>
                </dt>
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
