import styles from "./steps.module.css";

/** The steps of a job in their order; `now` counts from 0. Steps that are done may lead back. */
export function Steps({ steps, now }: { steps: readonly { name: string; href?: string }[]; now: number }) {
  return (
    <ol className={styles.steps} aria-label="Steps">
      {steps.map((step, index) => (
        <li
          key={step.name}
          data-done={index < now || undefined}
          aria-current={index === now ? "step" : undefined}
          className={styles.step}
        >
          {index < now && step.href ? <a href={step.href}>{step.name}</a> : step.name}
          {index < now ? <span className="heard"> (done)</span> : null}
        </li>
      ))}
    </ol>
  );
}
