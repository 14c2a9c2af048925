import { Explained } from "@/components/numbers";
import { type SizeGround, sizeSoFar } from "@/lib/registry/grow-outs/size-so-far";
import { SizeBar } from "../../_field/live-size";
import { sizeSoFarExplanation } from "../../_words/size-so-far-explanation";
import { sizeWords } from "../../_words/size-so-far-words";
import styles from "./counts.module.css";

/** What the grow-out counts as by what is on record: the figure, its span with the floor marked, and what to count next. */
export function SizeByNow({ ground }: { ground: SizeGround }) {
  const size = sizeSoFar(ground);
  const words = sizeWords(size, ground);
  const explanation = sizeSoFarExplanation(size, ground);
  // Once seed is taken the head of the page says it.
  const saidAbove = size.state === "known" || size.state === "span";
  const line = (
    <span className={styles.size}>
      <span className={styles.figure} data-waiting={words.narrow || undefined}>
        {words.figure}
      </span>
      <span>{words.sentence}</span>
    </span>
  );
  return (
    <div className={styles.byNow}>
      {saidAbove ? null : explanation ? <Explained explanation={explanation}>{line}</Explained> : <p>{line}</p>}
      <SizeBar size={size} floor={ground.floor} label={`${words.figure} ${words.sentence}`} />
      {saidAbove ? (
        <p className={words.narrow ? styles.waiting : "quiet"}>{`It counts as ${words.figure}.`}</p>
      ) : words.floor ? (
        <p className={words.narrow ? styles.waiting : "quiet"}>{words.floor}</p>
      ) : null}
      {words.narrows ? <p className={styles.narrows}>{words.narrows}</p> : null}
    </div>
  );
}
