import { Notice } from "@/components/ui";
import { cautionsAt, type SeedInHand, type Step } from "@/lib/science/cautions/cautions-at";
import styles from "./cautions.module.css";

/** The usual cautions at the step where the hand is, or at several that follow one another, in one notice; nothing where there are none. */
export function Cautions({ step, ...seed }: { step: Step | readonly Step[] } & SeedInHand) {
  const found = [step].flat().flatMap((each) => cautionsAt(each, seed));
  const cautions = [...new Map(found.map((caution) => [caution.code, caution])).values()];
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
