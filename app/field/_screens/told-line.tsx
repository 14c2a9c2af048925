import styles from "./screens.module.css";

/** One more thing that may be told of what is recorded: its name, what is told so far, and at a tap the way to tell it. */
export function ToldLine({
  name,
  told,
  otherwise,
  onTap,
}: {
  name: string;
  /** null: nothing is */
  told: string | number | null;
  /** what stands where nothing is told */
  otherwise: string;
  onTap: () => void;
}) {
  return (
    <li>
      <button type="button" className={styles.score} onClick={onTap}>
        <span>{name}</span>
        <span className={told === null ? styles.notScored : styles.scored}>{told ?? otherwise}</span>
      </button>
    </li>
  );
}
