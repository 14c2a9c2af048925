import type { ReactNode } from "react";
import styles from "./section.module.css";

/** A part of a page under its own heading; `aside` stands on the heading's line (a link, a count). */
export function Section({
  title,
  id,
  aside,
  children,
}: {
  title: ReactNode;
  id: string;
  aside?: ReactNode;
  children: ReactNode;
}) {
  return (
    <section className={styles.section} aria-labelledby={`${id}-title`} id={id}>
      <div className={styles.head}>
        <h2 id={`${id}-title`}>{title}</h2>
        {aside ? <div className={styles.aside}>{aside}</div> : null}
      </div>
      {children}
    </section>
  );
}
