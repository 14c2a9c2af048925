import { type ComponentType, useEffect, useState } from "react";
import styles from "./field.module.css";

/** A screen that is fetched when it is first needed, or ahead of that. */
export interface LaterPart<P> {
  /** null: it is not here yet */
  now(): ComponentType<P> | null;
  fetched(): Promise<ComponentType<P>>;
  ahead(): void;
}

export function laterPart<P>(load: () => Promise<{ readonly default: ComponentType<P> }>): LaterPart<P> {
  let here: ComponentType<P> | null = null;
  const fetched = async () => {
    here = (await load()).default;
    return here;
  };
  return { now: () => here, fetched, ahead: () => void fetched().catch(() => undefined) };
}

/**
 * Shows such a screen as soon as it is here. Not by React's own lazy parts: those hold back for a third of a second what comes in the place of a waiting
 * line, and a hand waits for it.
 */
export function Later<P extends object>({ part, props }: { part: LaterPart<P>; props: P }) {
  const [Part, setPart] = useState<ComponentType<P> | null>(() => part.now());
  const [missing, setMissing] = useState(false);
  useEffect(() => {
    if (Part !== null) return;
    let shown = true;
    part.fetched().then(
      (found) => shown && setPart(() => found),
      () => shown && setMissing(true),
    );
    return () => {
      shown = false;
    };
  }, [Part, part]);
  if (Part !== null) return <Part {...props} />;
  return (
    <p className={styles.opening} role={missing ? "alert" : undefined}>
      {missing ? "This part of the page is not on the phone yet. Open it once where there is a signal." : "Opening …"}
    </p>
  );
}
