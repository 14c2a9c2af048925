"use client";

import { zooms } from "./address";
import type { LotCard } from "./cards";
import styles from "./stem-chart.module.css";

/** Nearer, farther, all years; and what a person is asked to do now. */
export function ChartTools({
  zoom,
  onZoom,
  selected,
  choosing,
  withoutWord,
}: {
  zoom: number;
  onZoom: (zoom: number) => void;
  selected: LotCard | null;
  choosing: boolean;
  withoutWord?: string;
}) {
  const place = (zooms as readonly number[]).indexOf(zoom);
  const step = (by: number) => onZoom(zooms[Math.max(0, Math.min(zooms.length - 1, place + by))] ?? 1);
  return (
    <div className={`${styles.tools} not-on-paper`}>
      <p aria-live="polite">
        {choosing && selected
          ? `Now choose the lot to set beside ${selected.number}.`
          : selected === null
            ? "Choose a lot: where it comes from is then traced."
            : ""}
        {withoutWord ? ` Names are without their first word, ${withoutWord.trim()}.` : ""}
      </p>
      <div className={styles.zoom}>
        <button type="button" onClick={() => step(1)} disabled={place === zooms.length - 1}>
          Fewer years
        </button>
        <button type="button" onClick={() => step(-1)} disabled={place <= 0}>
          More years
        </button>
        <button type="button" onClick={() => onZoom(1)} disabled={zoom === 1}>
          All years
        </button>
      </div>
    </div>
  );
}
