import { Notice } from "@/components/ui";
import { cautionsAt, type SeedInHand, type Step } from "@/lib/science/cautions/cautions-at";
import styles from "./cautions.module.css";

/** The usual cautions at the step where the hand is, in one notice; nothing where there are none. */
export function Cautions({ step, ...seed }: { step: Step } & SeedInHand) {
  const cautions = cautionsAt(step, seed);
  if (cautions.length === 0) return null;
  return (
    <Notice kind="caution">
      {cautions.map(({ code, title, care }) => (
        <div key={code} className={styles.caution}>
          <p className={styles.title}>{title}</p>
          {care.map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
        </div>
      ))}
    </Notice>
  );
}
