import { useId } from "react";
import { Hatch } from "@/components/doubt/hatch";
import { SimpleTable } from "@/components/tables/simple-table";
import { wholeNumber } from "@/lib/display/numbers";
import { costInWords, sizeInWords, standsAt } from "./choice-words";
import styles from "./drawings.module.css";
import { type BreadthPoint, breadthLayout, chartHeight, chartWidth, everySoMany, type Marked } from "./gain-layout";

/**
 * Gain against breadth over every cut: to the right what the seed counts as, upwards how far the kept stand above their neighbours. The cut is marked; where the
 * size is a span the line is a hatched band between its ends. The table below says the same.
 */
export function GainAndBreadth({
  points,
  now,
  floor,
  wanted,
}: {
  points: readonly BreadthPoint[];
  now: Marked;
  floor: number | null;
  wanted: number | null;
}) {
  const hatch = useId();
  const { curve, band, floorAt, at, wantedAt, across, upward, zero } = breadthLayout(points, now, floor, wanted);
  // the names under the line must not lie on each other
  const floorFarRight = floorAt !== null && floorAt > chartWidth / 2;
  const label = `Gain against breadth. With ${now.kept} kept the seed counts as ${sizeInWords(now.size)} plants, and they stand at ${standsAt(now.gain)} above their neighbours.`;
  return (
    <figure className={styles.figure}>
      <figcaption>
        <b>Gain against breadth.</b> Each point of the line is another cut: fewer kept to the left, and higher above
        their neighbours.
      </figcaption>
      <svg className={styles.chart} viewBox={`0 0 ${chartWidth} ${chartHeight}`} role="img" aria-label={label}>
        <defs>
          <Hatch id={hatch} />
        </defs>
        {upward.map((tick) => (
          <g key={tick.value}>
            <path className={styles.rule} d={`M46 ${tick.at}H${chartWidth - 8}`} />
            <text className={styles.tick} x="40" y={tick.at + 5} textAnchor="end">
              {standsAt(tick.value)}
            </text>
          </g>
        ))}
        {across.map((tick) => (
          <g key={tick.value}>
            <path className={styles.axis} d={`M${tick.at} ${zero}v5`} />
            <text className={styles.tick} x={tick.at} y={zero + 19} textAnchor="middle">
              {wholeNumber(tick.value)}
            </text>
          </g>
        ))}
        <path className={styles.axis} d={`M46 ${zero}H${chartWidth - 8}`} />
        <text
          className={styles.tick}
          x={floorFarRight ? 46 : chartWidth - 8}
          y={zero + 37}
          textAnchor={floorFarRight ? "start" : "end"}
        >
          effective size →
        </text>
        <text className={styles.tick} x="4" y="14">
          ↑ above their neighbours, in standard deviations
        </text>
        {floorAt === null ? null : (
          <g>
            <path className={styles.floor} d={`M${floorAt} 26V${zero}`} />
            <text className={styles.floorName} x={floorAt} y={zero + 37} textAnchor={floorFarRight ? "end" : "middle"}>
              floor
            </text>
          </g>
        )}
        {band === null ? null : <path className={styles.band} d={band} fill={`url(#${hatch})`} />}
        <path className={styles.curve} d={curve} />
        {wantedAt === null ? null : <path className={styles.wanted} d={`M${wantedAt.x} ${wantedAt.y - 9}v18`} />}
        <path className={styles.lead} d={`M${at.x} ${at.y}V${zero}M46 ${at.y}H${at.x}`} />
        <circle className={styles.now} cx={at.x} cy={at.y} r="7" />
        <text
          className={styles.nowName}
          x={at.x > chartWidth * 0.7 ? at.x - 12 : at.x + 12}
          y={Math.max(38, at.y - 9)}
          textAnchor={at.x > chartWidth * 0.7 ? "end" : "start"}
        >
          {wholeNumber(now.kept)} kept
        </text>
      </svg>
      <details className={`${styles.twin} whole-on-paper`}>
        <summary>The same in figures</summary>
        <SimpleTable
          columns={[
            { key: "kept", name: "Kept", kind: "count" },
            { key: "size", name: "Counts as", kind: "count" },
            { key: "cost", name: "Costs", kind: "count" },
            { key: "gain", name: "Stand at", kind: "count" },
          ]}
          rows={everySoMany(points, now.kept).map(({ kept, size, gain }) => ({
            id: String(kept),
            cells: {
              kept: kept === now.kept ? <b>{kept}, now</b> : String(kept),
              size: sizeInWords(size),
              cost: costInWords(size),
              gain: standsAt(gain),
            },
          }))}
        />
      </details>
    </figure>
  );
}
