"use client";

import Link from "next/link";
import { Section } from "@/components/frame/section";
import { ButtonLink } from "@/components/ui/button-link";
import { isOffered, useClosed } from "@/components/ui/offered";
import type { NextOfGrowOut } from "@/lib/registry/grow-outs/next-of-grow-out";
import { nextInWords, othersOf } from "../../_words/next-words";
import styles from "./next-steps.module.css";

const atOnce = 4;

/** What the hand does next, the most pressing first, each with why; and what can be written at any time. */
export function NextSteps({ growOutId, next }: { growOutId: string; next: readonly NextOfGrowOut[] }) {
  const closed = useClosed();
  const steps = nextInWords(growOutId, next)
    .filter((step) => isOffered(step.href, closed))
    .slice(0, atOnce);
  const shown = new Set(steps.map((step) => step.href.split("?")[0]));
  const others = othersOf(growOutId).filter((other) => !shown.has(other.href) && isOffered(other.href, closed));
  // Whoever writes nothing of it has no next step.
  if (closed.deeds.includes("record-in-field")) return null;
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
