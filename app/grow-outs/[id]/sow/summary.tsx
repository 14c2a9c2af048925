import { seedsCounted } from "@/lib/display/numbers";
import { type UnitSettings, weight } from "@/lib/display/units";
import { gramsLeft } from "@/lib/registry/grow-outs/sowing-plan";
import { leftInWords } from "../../_words/reserve-words";
import type { LineTaken } from "./sow-form";
import styles from "./summary.module.css";

/** What leaves which jar, in the question that is asked before it is written. */
export function Summary({ taken, units }: { taken: readonly LineTaken[]; units: UnitSettings }) {
  if (taken.length === 0) return <p>No amount is written yet.</p>;
  return (
    <ul className={styles.summary}>
      {taken.map(({ lot, taken: part }) => {
        const left = gramsLeft(lot, part);
        return (
          <li key={lot.id}>
            {part.unit === "g" ? weight(part.amount, units) : seedsCounted(part.amount)} of lot {lot.number}.{" "}
            {leftInWords(left, weight(left, units))}
          </li>
        );
      })}
    </ul>
  );
}
