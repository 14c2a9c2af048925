import type { ReactNode } from "react";
import { passStages, pullReasons } from "@/lib/schemas/grow-outs/field-kinds";
import styles from "./foot-boxes.module.css";

/** Boxes for one rogue pass, counts and flowering: what else a walk through the plants brings home. */
export function FootBoxes({ children }: { children: ReactNode }) {
  return (
    <div className={styles.foot}>
      {children}
      <div className={styles.parts}>
        <div className={styles.part}>
          <p className={styles.title}>Rogue pass</p>
          <p className={styles.ticks}>
            {passStages.map((stage) => (
              <Tick key={stage}>{stage}</Tick>
            ))}
          </p>
          <p className={styles.ticks}>
            <Tick>before pollen shed</Tick>
            <Tick>after</Tick>
            <Tick>walked, found none</Tick>
          </p>
          <p className={styles.boxes}>
            <Box>looked at</Box>
            {pullReasons.map((reason) => (
              <Box key={reason}>{reason.replace(/^(off-type|suspected) /, "")}</Box>
            ))}
            <Box>left</Box>
          </p>
        </div>
        <div className={styles.part}>
          <p className={styles.title}>Counts and flowering</p>
          <p className={styles.boxes}>
            <Box>up</Box>
            <Box>thinned to</Box>
            <Box>standing</Box>
            <Box>in flower</Box>
          </p>
          <p className={styles.boxes}>
            <Box>first flower</Box>
            <Box>half</Box>
            <Box>last</Box>
            <Box>silk, first</Box>
          </p>
        </div>
      </div>
    </div>
  );
}

function Tick({ children }: { children: ReactNode }) {
  return (
    <span className={styles.tick}>
      <span className={styles.square} aria-hidden="true" />
      {children}
    </span>
  );
}

function Box({ children }: { children: ReactNode }) {
  return (
    <span className={styles.box}>
      <span className={styles.open} aria-hidden="true" />
      <span>{children}</span>
    </span>
  );
}
