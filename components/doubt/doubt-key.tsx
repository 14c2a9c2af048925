import { useId } from "react";
import styles from "./doubt-key.module.css";
import { Hatch } from "./hatch";
import { spindle } from "./spindle";

/** The key to the four signs of doubt, for the foot of every page and every print. */
export function DoubtKey() {
  const hatch = useId();
  return (
    <ul className={styles.key} aria-label="How to read the drawings">
      <li>
        <svg width="26" height="14" aria-hidden="true">
          <rect x="1" y="2" width="24" height="10" fill="var(--counted)" stroke="var(--counted)" />
        </svg>
        solid is counted
      </li>
      <li>
        <svg width="26" height="14" aria-hidden="true">
          <defs>
            <Hatch id={hatch} />
          </defs>
          <rect x="1" y="2" width="24" height="10" fill={`url(#${hatch})`} stroke="var(--counted)" />
        </svg>
        hatched is assumed
      </li>
      <li>
        <svg width="26" height="14" aria-hidden="true">
          <rect x="1" y="2" width="24" height="10" fill="none" stroke="var(--unknown)" strokeDasharray="2.5 2" />
        </svg>
        open is unknown
      </li>
      <li>
        <svg width="40" height="14" aria-hidden="true">
          <path d={spindle(0, 40, 18, 7, 9)} fill="var(--counted)" />
        </svg>
        drawn out is a span
      </li>
    </ul>
  );
}
