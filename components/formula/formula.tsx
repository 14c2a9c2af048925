import temml from "temml";
import styles from "./formula.module.css";

/** A formula typeset from TeX, as MathML that browsers draw and screen readers read; `plain` says the same in one line of text. */
export function Formula({ tex, plain }: { tex: string; plain?: string }) {
  const mathml = temml.renderToString(tex, { displayMode: true, throwOnError: true });
  return (
    // A long formula scrolls on a small screen, so it can be reached by the keyboard. The markup is made here from our own
    // formulas alone; nothing that a person typed goes into it.
    <figure
      className={styles.formula}
      aria-label={plain ?? "Formula"}
      // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable
      tabIndex={0}
      // biome-ignore lint/security/noDangerouslySetInnerHtml: MathML of a constant
      dangerouslySetInnerHTML={{ __html: mathml }}
    />
  );
}
