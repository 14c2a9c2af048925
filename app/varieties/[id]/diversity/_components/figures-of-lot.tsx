import { Explained, Measured } from "@/components/numbers";
import type { LotOfVariety } from "@/lib/registry/varieties/read-variety";
import { figuresOfLot } from "../_words/explain-figures";
import { gradeOf } from "../_words/kept-in-words";
import styles from "./diversity.module.css";

/** Every figure of a lot's lineage, each with how it came about. */
export function FiguresOfLot({ lot }: { lot: LotOfVariety }) {
  const grade = gradeOf(lot);
  return (
    <div className={styles.figures}>
      {figuresOfLot(lot).map(({ key, name, value, explanation }) => (
        <Explained key={key} explanation={explanation}>
          <span className={styles.line}>
            <span>{name}</span>{" "}
            <Measured value={value === "unknown" ? null : value} grade={grade === "unknown" ? "counted" : grade} />
          </span>
        </Explained>
      ))}
    </div>
  );
}
