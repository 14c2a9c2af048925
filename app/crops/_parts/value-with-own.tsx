import type { ReactNode } from "react";
import { AskTwice } from "@/components/ui";
import { Offered, Way } from "@/components/ui/offered";
import type { TableMark } from "@/lib/schemas/tables/published-tables";
import styles from "./value-with-own.module.css";

/** Values under one another, each with where it comes from and the steward's own in its place. */
export function ValuesWithOwn({ children }: { children: ReactNode }) {
  return <dl className={styles.fields}>{children}</dl>;
}

/**
 * One value of a list or a published table: what holds here, the steward's own value with its reason where there is one, where the published one
 * comes from and how far that was checked, and the ways to change it.
 */
export function ValueWithOwn({
  id,
  name,
  published,
  own,
  by,
  sources,
  href,
  drop,
}: {
  id: string;
  name: string;
  /** what the list or table says, worded; null: nothing */
  published: string | null;
  own: { readonly value: string; readonly reason: string; readonly source: string | null } | null;
  /** who says it: "list", "table" */
  by: string;
  sources: ReactNode;
  /** where an own value is written */
  href: string;
  drop: () => Promise<void>;
}) {
  return (
    <div className={styles.field} id={id}>
      <dt>{name}</dt>
      <dd className={styles.value}>
        {own ? (
          <>
            <span>{own.value}</span>
            <span className={styles.own}>
              Your own value: <span className="told">{own.reason}</span>
              {own.source ? ` (${own.source})` : ""}. The {by} says {published ?? "nothing"}.
            </span>
          </>
        ) : (
          <span>{published ?? <span className="quiet">unknown</span>}</span>
        )}
      </dd>
      <dd className={styles.source}>{published === null ? null : sources}</dd>
      <dd className={styles.change}>
        <Way href={href}>
          {own ? "Change it" : "Own value"}
          <span className="heard"> for {name}</span>
        </Way>
        {own ? (
          <Offered deed="settings">
            <AskTwice
              button={`The ${by}’s again`}
              buttonKind="quiet"
              title={`Let the ${by}’s value hold again for “${name}”?`}
              says={
                <p>
                  The {by} says {published ?? "nothing"}. Your own value stays in the history.
                </p>
              }
              confirm={`Let the ${by}’s value hold`}
              kind="entry"
              action={drop}
            />
          </Offered>
        ) : null}
      </dd>
    </div>
  );
}

const marks: Readonly<Record<TableMark, string>> = {
  verified: "read in its source",
  "second hand": "read second hand",
  "not verified": "not verified",
};

/** A source with its mark: how far the value was checked in it. */
export function MarkedSource({ words, mark }: { words: string; mark: TableMark }) {
  return (
    <span className={styles.from} data-mark={mark}>
      {words}, <b>{marks[mark]}</b>
    </span>
  );
}
