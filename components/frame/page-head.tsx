import type { ReactNode } from "react";
import styles from "./page-head.module.css";

/**
 * The head of a page: what it is about (`title`), what kind of thing that is (`kind`, one word or two), its seed-coat
 * `mark`, one `figure` with its sentence, and what can be done here (`actions`, at most three).
 */
export function PageHead({
  title,
  kind,
  mark,
  figure,
  children,
  actions,
}: {
  title: ReactNode;
  kind?: ReactNode;
  mark?: ReactNode;
  figure?: ReactNode;
  children?: ReactNode;
  actions?: ReactNode;
}) {
  return (
    <div className={styles.head}>
      <div className={styles.title}>
        {mark ? <div className={styles.mark}>{mark}</div> : null}
        <div>
          {kind ? <p className={styles.kind}>{kind}</p> : null}
          <h1>{title}</h1>
        </div>
      </div>
      {figure}
      {children}
      {actions ? <div className={styles.actions}>{actions}</div> : null}
    </div>
  );
}
