import Link from "next/link";
import { Way } from "@/components/ui/offered";
import { type Explanation, methodOf } from "@/lib/display/explanation";
import styles from "./explanation-body.module.css";

/** The explanation itself: answer, formula, inputs (if brief, on the screen alone), what was assumed, how unsure, sources, the command line. */
export function ExplanationBody({ explanation, brief = false }: { explanation: Explanation; brief?: boolean }) {
  const { title, answer, formula, inputs, assumed, unsure, sources, calc } = explanation;
  const method = methodOf(explanation);
  return (
    <div className={styles.body}>
      <p className={styles.title}>
        {title}: <b>{answer}</b>
      </p>
      <p className={styles.formula}>{formula}</p>
      {inputs.length > 0 ? (
        <dl className={brief ? `${styles.inputs} not-on-paper` : styles.inputs}>
          {inputs.map((input) => (
            <div key={`${input.name}:${input.value}`} className={styles.input}>
              <dt>{input.name}</dt>
              <dd>
                {input.href ? (
                  <Way href={input.href} otherwise={input.value}>
                    {input.value}
                  </Way>
                ) : (
                  input.value
                )}
              </dd>
            </div>
          ))}
        </dl>
      ) : null}
      {assumed.length > 0 ? (
        <ul className={styles.assumed} aria-label="Assumed">
          {assumed.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      ) : (
        <p className={styles.none}>Nothing was assumed.</p>
      )}
      {unsure ? <p>{unsure}</p> : null}
      {sources.length > 0 ? <p className={styles.sources}>After {sources.join("; ")}.</p> : null}
      {calc ? (
        <p className={`${styles.calc} not-on-paper`}>
          <span>The same number from the command line: </span>
          <code>{calc}</code>
        </p>
      ) : null}
      {method ? (
        <p className={`${styles.calc} not-on-paper`}>
          <Link href={`/methods/${method}`}>What this calculation is, and when to doubt it</Link>
        </p>
      ) : null}
    </div>
  );
}
