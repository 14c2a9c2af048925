import type { ReactNode } from "react";
import { type Lie, margin, type Paper, sizeOf } from "./paper";
import styles from "./paper-page.module.css";

/** One sheet of paper in its own size: drawn smaller on a narrow screen, and printed as it is. */
export function PaperPage({
  paper,
  lie,
  label,
  children,
}: {
  paper: Paper;
  lie: Lie;
  label: string;
  children: ReactNode;
}) {
  const { width, height } = sizeOf(paper, lie);
  return (
    <section
      className={styles.page}
      data-paper={paper}
      data-lie={lie}
      aria-label={label}
      // a tenth less than the paper is high: rounding must not make a page more
      style={{ inlineSize: `${width}mm`, blockSize: `${height - 0.1}mm`, padding: `${margin}mm` }}
    >
      {children}
    </section>
  );
}
