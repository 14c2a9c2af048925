import Link from "next/link";
import { Section } from "@/components/frame";
import { ButtonLink } from "@/components/ui";
import type { NextOfGrowOut } from "@/lib/registry/grow-outs/next-of-grow-out";
import { nextInWords, othersOf } from "../../_words/next-words";
import styles from "./next-steps.module.css";

const atOnce = 4;

/** What the hand does next, the most pressing first, each with why; and what can be written at any time. */
export function NextSteps({ growOutId, next }: { growOutId: string; next: readonly NextOfGrowOut[] }) {
  const steps = nextInWords(growOutId, next).slice(0, atOnce);
  const shown = new Set(steps.map((step) => step.href.split("?")[0]));
  const others = othersOf(growOutId).filter((other) => !shown.has(other.href));
  return (
    <div className="not-on-paper">
      <Section id="next" title={steps.length === 0 ? "Nothing waits" : "What comes next"}>
        {steps.length === 0 ? null : (
          <ol className={styles.steps}>
            {steps.map((step, index) => (
              <li key={step.words} className={styles.step}>
                <ButtonLink href={step.href} kind={index === 0 ? "chief" : "plain"}>
                  {step.words}
                </ButtonLink>
                <span className={styles.why}>{step.why}</span>
              </li>
            ))}
          </ol>
        )}
        <nav aria-label="What can be written of it" className={styles.others}>
          <span>{steps.length === 0 ? "Write of it:" : "Or write of it:"}</span>
          {others.map((other) => (
            <Link key={other.href} href={other.href}>
              {other.words}
            </Link>
          ))}
        </nav>
      </Section>
    </div>
  );
}
