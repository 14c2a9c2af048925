import type { ReactNode } from "react";
import styles from "./notice.module.css";

/**
 * A few lines set apart. plain: something to know; caution: something that can hurt, always with the usual care and
 * "your local rules"; waiting: something a hand must do. `actions` stands below.
 */
export function Notice({
  kind = "plain",
  title,
  children,
  actions,
}: {
  kind?: "plain" | "caution" | "waiting";
  title?: ReactNode;
  children?: ReactNode;
  actions?: ReactNode;
}) {
  return (
    <aside className={`${styles.notice} ${styles[kind]}`} aria-label={kind === "caution" ? "Caution" : undefined}>
      {title ? <p className={styles.title}>{title}</p> : null}
      {children}
      {actions ? <div className={styles.actions}>{actions}</div> : null}
    </aside>
  );
}
