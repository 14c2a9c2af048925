"use client";

import Link from "next/link";
import type { ReactNode } from "react";
import { Button } from "@/components/ui";
import type { LotCard } from "./cards";
import styles from "./stem-chart.module.css";
import type { Way } from "./trace";

/** The lot that was opened: what is known of it, and the ways to follow it. */
export function LotPanel({
  card,
  other,
  way,
  choosing,
  onWay,
  onClose,
  shared,
}: {
  card: LotCard;
  other: LotCard | undefined;
  way: Way;
  choosing: boolean;
  onWay: (way: Way) => void;
  onClose: () => void;
  shared: ReactNode;
}) {
  return (
    <section className={styles.panel} aria-label={`Lot ${card.number}`}>
      <div className={styles.panelHead}>
        <p className={styles.panelName}>
          <Link href={card.href}>{card.number}</Link> <span>{card.kind}</span>
        </p>
        <div className={`${styles.ways} not-on-paper`}>
          <Button onClick={() => onWay("back")} aria-pressed={way === "back" && !choosing}>
            Where it comes from
          </Button>
          <Button onClick={() => onWay("forward")} aria-pressed={way === "forward" && !choosing}>
            All that came of it
          </Button>
          <Button onClick={() => onWay("shared")} aria-pressed={way === "shared" || choosing}>
            What it shares with another
          </Button>
          <Button kind="quiet" onClick={onClose}>
            Close
          </Button>
        </div>
      </div>
      <dl className={styles.facts}>
        {card.facts.map(({ name, value }) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
      {way === "shared" && other ? (
        <div className={styles.shared}>
          {shared ?? (
            <p className="quiet">
              What {card.number} and {other.number} share is being worked out.
            </p>
          )}
        </div>
      ) : null}
    </section>
  );
}
