import type { ReactNode } from "react";
import styles from "./empty-state.module.css";
import { type EmptyNoun, EmptyPicture } from "./pictures";

/** A page or list with nothing in it yet: a picture of the noun, one sentence, one action. */
export function EmptyState({ noun, children, action }: { noun: EmptyNoun; children: ReactNode; action?: ReactNode }) {
  return (
    <div className={styles.empty}>
      <EmptyPicture noun={noun} />
      <p className={styles.sentence}>{children}</p>
      {action}
    </div>
  );
}
