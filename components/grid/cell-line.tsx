import styles from "./grid.module.css";
import { refusalOf } from "./grid-line";
import type { GridColumn, GridRow } from "./grid-types";

/**
 * The line below a grid: which cell is in focus, what may be written there, who scored; why what stands there cannot be kept; and where the
 * answers are few, a button for each.
 */
export function CellLine({
  row,
  rowName,
  column,
  text,
  refusal,
  answer,
}: {
  row: GridRow | null;
  /** "Plant 12" */
  rowName: string;
  column: GridColumn | null;
  text: string;
  /** by the server, of what stands there */
  refusal: string | null;
  answer: (text: string) => void;
}) {
  if (!row || !column) return <div className={styles.bar} />;
  const wrong = refusalOf(column, text) ?? refusal;
  const note = row.notes[column.key];
  return (
    <div className={styles.bar}>
      <p>
        <strong>
          {rowName}, {column.name}
          {text === "" ? ": empty" : `: ${text}`}
        </strong>
        {note ? <span className="quiet"> {note.words}</span> : null}
      </p>
      <p role="status" className={wrong ? styles.wrong : "quiet"}>
        {wrong ?? column.hint}
      </p>
      {column.choices.length > 0 ? (
        // biome-ignore lint/a11y/useSemanticElements: buttons that answer for a cell, not fields of a form
        <div role="group" aria-label={`Answers for ${column.name}`} className={styles.choices}>
          {column.choices.map((choice) => (
            <button
              key={choice.text}
              type="button"
              className={styles.choice}
              aria-pressed={choice.text === text}
              title={choice.words === choice.text ? undefined : choice.words}
              onClick={() => answer(choice.text)}
            >
              {choice.text}
              {choice.words === choice.text ? null : <span className="heard"> {choice.words}</span>}
            </button>
          ))}
        </div>
      ) : null}
    </div>
  );
}
