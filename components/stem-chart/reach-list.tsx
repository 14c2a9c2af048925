"use client";

import Link from "next/link";
import { SimpleTable } from "@/components/tables/simple-table";
import { countedInWords } from "@/lib/display/plurals";
import type { LotCard, LotCards } from "./cards";
import styles from "./stem-chart.module.css";

const columns = [
  { key: "lot", name: "Lot" },
  { key: "when", name: "When" },
  { key: "how", name: "How it came" },
  { key: "holder", name: "In whose hands" },
  { key: "holds", name: "Still holds", kind: "count" },
] as const;

/** All that came of a lot, with who holds it and what they still have: for calling it back, or for telling them. */
export function ReachList({
  lot,
  ids,
  cards,
  href,
}: {
  lot: LotCard;
  ids: readonly string[];
  cards: LotCards;
  href: string;
}) {
  const rows = ids.flatMap((id) => (id === lot.id || !cards[id] ? [] : [cards[id]]));
  const hands = new Set(rows.map(({ holder }) => holder)).size;
  return (
    <section className={styles.reach} aria-label={`All that came of ${lot.number}`}>
      <h3>All that came of {lot.number}</h3>
      {rows.length === 0 ? (
        <p>Nothing came of it: it was neither sown, blended nor parted.</p>
      ) : (
        <>
          <p>
            {countedInWords(rows.length, "record")} in {countedInWords(hands, "hand")}.{" "}
            <a className="not-on-paper" href={href} download>
              As CSV
            </a>
          </p>
          <SimpleTable
            entries
            columns={columns}
            rows={rows.map((card) => ({
              id: card.id,
              cells: {
                lot: <Link href={card.href}>{card.number}</Link>,
                when: card.when,
                how: card.kind,
                holder: card.holder,
                holds: card.holds,
              },
            }))}
          />
        </>
      )}
    </section>
  );
}
