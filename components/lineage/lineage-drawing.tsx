"use client";

import Link from "next/link";
import { useEffect, useId, useMemo, useRef, useState } from "react";
import { Hatch } from "@/components/doubt/hatch";
import { spindle } from "@/components/doubt/spindle";
import { layLineage, type PlacedLot } from "./layout";
import styles from "./lineage.module.css";
import { lotInWords, yearsInWords } from "./lineage-words";
import type { LineageLot } from "./lots";

const leastWidth = 300;
const seed = "M-8 .5C-8-4-4.5-6.5 0-6.5S8-4 8-.5 4.5 6 0 6-8 4-8 .5Z";

/**
 * Where a few lots come from: years from left to right, a stem as thick as the effective size it passed through, its core
 * surely, its hatched sleeve at most, open where the size is unknown, dotted where it is only told; a founder has a dotted
 * root. It grows as `lots` grow. A list of the same stands below for the ear.
 */
export function LineageDrawing({ lots, title }: { lots: readonly LineageLot[]; title: string }) {
  const id = useId();
  const frame = useRef<HTMLDivElement>(null);
  const [width, setWidth] = useState(620);
  useEffect(() => {
    const element = frame.current;
    if (!element) return;
    const watch = new ResizeObserver(([entry]) => {
      if (entry) setWidth(Math.max(leastWidth, Math.round(entry.contentRect.width)));
    });
    watch.observe(element);
    return () => watch.disconnect();
  }, []);
  const layout = useMemo(() => layLineage(lots, width), [lots, width]);
  const names = useMemo(() => new Map(lots.map((lot) => [lot.id, lot.name])), [lots]);
  if (lots.length === 0) return null;
  return (
    <figure className={styles.figure}>
      <div className={styles.frame} ref={frame}>
        <svg
          viewBox={`0 0 ${layout.width} ${layout.height}`}
          width={layout.width}
          height={layout.height}
          aria-hidden="true"
          focusable="false"
        >
          <defs>
            <Hatch id={id} gap={4} />
          </defs>
          {layout.years.map((tick) => (
            <g key={tick.year} className={styles.year}>
              <path d={`M${tick.x} 24V${layout.height}`} />
              <text x={tick.x} y="15">
                {tick.year}
              </text>
            </g>
          ))}
          {layout.lots
            .filter(({ left, right }) => right - left > 6)
            .map(({ lot, x, y, left, right }) => (
              <path key={lot.id} className={styles.fuzzy} d={spindle(left, right, x, y, 20)} />
            ))}
          {layout.stems.map((stem) => (
            <g key={`${stem.from}:${stem.to}`} className={styles[stem.kind]}>
              {stem.kind === "told" ? (
                <path d={stem.middle} />
              ) : (
                <>
                  {stem.sleeve ? <path className={styles.sleeve} d={stem.sleeve} fill={`url(#${id})`} /> : null}
                  <path className={styles.core} d={stem.core} />
                </>
              )}
            </g>
          ))}
          {layout.lots.map((placed) => (
            <Lot key={placed.lot.id} placed={placed} />
          ))}
        </svg>
      </div>
      <ul className="heard" aria-label={title}>
        {layout.lots.map(({ lot }) => (
          <li key={lot.id}>
            {lot.href ? <Link href={lot.href}>{lotInWords(lot, names)}</Link> : lotInWords(lot, names)}
          </li>
        ))}
      </ul>
    </figure>
  );
}

function Lot({ placed }: { placed: PlacedLot }) {
  const { lot, x, y, left, above } = placed;
  return (
    <g className={styles.lot}>
      {lot.parents.length === 0 ? <path className={styles.root} d={`M${Math.min(x - 9, left - 4)} ${y}h-27`} /> : null}
      <path className={styles.seed} d={seed} transform={`translate(${x} ${y})`} data-unsure={!lot.years || undefined} />
      <text x={x} y={above ? y - 29 : y + 24}>
        {lot.name}
      </text>
      <text className={styles.when} x={x} y={above ? y - 14 : y + 39}>
        {lot.years ? yearsInWords(lot) : "year ?"}
      </text>
    </g>
  );
}
