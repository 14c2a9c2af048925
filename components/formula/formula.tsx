import temml from "temml";
import styles from "./formula.module.css";

/** A formula typeset from TeX, as MathML that browsers draw and screen readers read; `plain` says the same in one line of text. */
export function Formula({ tex, plain }: { tex: string; plain?: string }) {
  const mathml = temml.renderToString(tex, { displayMode: true, throwOnError: true });
  return (
    // The markup is made here from our own formulas alone; nothing that a person typed goes into it.
    // biome-ignore lint/security/noDangerouslySetInnerHtml: MathML of a constant
    <div className={styles.formula} title={plain} dangerouslySetInnerHTML={{ __html: mathml }} />
  );
}
