import { useFromTheTop } from "../_components/use-from-the-top";
import controls from "./controls.module.css";
import { NumberPad } from "./number-pad";
import styles from "./screens.module.css";

/** A number of plants that may be left open: what is not counted is told as such, and is not none. */
export function FigurePanel({
  title,
  hint,
  first,
  onFigure,
}: {
  title: string;
  hint: string;
  first: number | null;
  onFigure: (plants: number | null) => void;
}) {
  useFromTheTop();
  return (
    <>
      <h1>{title}</h1>
      <p className={styles.quietNear}>{hint}</p>
      <div className={controls.beside}>
        <button type="button" className={controls.quietChoice} onClick={() => onFigure(null)}>
          Not counted
        </button>
      </div>
      <div className={styles.thumb}>
        <NumberPad
          label={title}
          first={first === null ? "" : String(first)}
          confirm="So many"
          onConfirm={(plants) => onFigure(plants)}
        />
      </div>
    </>
  );
}
