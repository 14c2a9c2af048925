"use client";

import { Section } from "@/components/frame";
import { dateInWords } from "@/lib/display/dates";
import { counted } from "@/lib/display/plurals";
import type { ProposedLineage } from "@/lib/exchange/notebook-lines/lineage";
import styles from "./typing.module.css";

/** The lots that the lines make, with the numbers they would get: each can be written otherwise before it is given. */
export function LotsToBe({
  lineage,
  numbers,
  refusals,
  onNumber,
}: {
  lineage: ProposedLineage;
  numbers: Readonly<Record<string, string>>;
  /** by the lot's name in the lines */
  refusals: Readonly<Record<string, readonly string[]>>;
  onNumber: (lot: string, number: string) => void;
}) {
  if (lineage.lots.length === 0) return null;
  return (
    <Section id="lots" title="Lots that these lines make" aside={counted(lineage.lots.length, "lot")}>
      <p className="quiet">
        A lot number is given once and for life. Ours are a word and a number; write your own where the jar has one.
      </p>
      <ul className={styles.lots}>
        {lineage.lots.map((lot) => (
          <li key={lot.name} className={styles.lot}>
            <input
              id={`number-${lot.name}`}
              className={styles.number}
              aria-label={`Number of the lot ${lot.name}`}
              aria-invalid={refusals[lot.name] ? true : undefined}
              value={numbers[lot.name] ?? ""}
              autoComplete="off"
              spellCheck={false}
              onChange={(event) => onNumber(lot.name, event.target.value)}
            />
            <span>{lotInWords(lot)}</span>
            {refusals[lot.name]?.map((sentence) => (
              <span key={sentence} className={styles.refusal} role="alert">
                {sentence}
              </span>
            ))}
          </li>
        ))}
      </ul>
    </Section>
  );
}

function lotInWords(lot: ProposedLineage["lots"][number]): string {
  const year = lot.year === null ? null : dateInWords(lot.year);
  if (lot.kind === "founder") {
    const when = year
      ? `harvest ${year}`
      : lot.firstSeen
        ? `harvest ${dateInWords(lot.firstSeen)} or before`
        : "year not known";
    return lot.assumed ? `founder lot, unknown before here; ${when}` : `founder lot, ${lot.words}; ${when}`;
  }
  if (lot.kind === "blend") return `blend of ${lot.parents.length} lots${year ? `, ${year}` : ""}`;
  if (lot.kind === "split") return `split${lot.person ? `, with ${lot.person}` : ""}`;
  return `harvest ${year ?? "of an unknown year"}`;
}
