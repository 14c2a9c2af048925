"use client";

import { uprightSpindle } from "@/components/doubt/spindle";
import { ScrollFrame } from "@/components/tables/scroll-frame";
import { plainNumber } from "@/lib/display/numbers";
import { type TraitPoint, traitLayout } from "./trait-layout";
import styles from "./trait-over-years.module.css";

/**
 * A trait through the years: for each grow-out all its plants from the least to the greatest (thin), the middle half of them (open box), their mean with its span (drawn
 * out), and the mean of those of which seed was kept (full square). The range that the type allows lies between broken lines. No line joins the years: between them lies the weather.
 */
export function TraitOverYears({
  points,
  range,
  unit,
  label,
  keyed = false,
}: {
  points: readonly TraitPoint[];
  range: readonly [number, number] | null;
  unit: string | null;
  /** the text twin; the table below tells the same */
  label: string;
  /** its key stands elsewhere, for several pictures */
  keyed?: boolean;
}) {
  const layout = traitLayout(points, range);
  const { width, height, left, bottom } = layout;
  return (
    <figure className={styles.figure}>
      <ScrollFrame className={styles.frame} label={label}>
        <svg
          className={styles.chart}
          width={width}
          height={height}
          viewBox={`0 0 ${width} ${height}`}
          role="img"
          aria-label={label}
        >
          {layout.band === null ? null : (
            <g>
              <rect
                className={styles.allowed}
                x={left}
                y={layout.band.from}
                width={width - left}
                height={layout.band.to - layout.band.from}
              />
              <path
                className={styles.limit}
                d={`M${left} ${layout.band.from}H${width}M${left} ${layout.band.to}H${width}`}
              />
            </g>
          )}
          {layout.upward.map(({ value, at }) => (
            <g key={value}>
              <path className={styles.rule} d={`M${left} ${at}H${width}`} />
              <text className={styles.tick} x={left - 6} y={at + 5} textAnchor="end">
                {plainNumber(value, 2)}
              </text>
            </g>
          ))}
          <path className={styles.axis} d={`M${left} ${bottom}H${width}`} />
          {unit === null ? null : (
            <text className={styles.tick} x={left - 6} y={bottom + 20} textAnchor="end">
              {unit}
            </text>
          )}
          {layout.points.map((point) => (
            <g key={point.id}>
              <path
                className={styles.reach}
                d={`M${point.x} ${point.ys[0]}V${point.ys[4]}M${point.x - 5} ${point.ys[0]}h10M${point.x - 5} ${point.ys[4]}h10`}
              />
              <rect
                className={styles.half}
                x={point.x - 9}
                y={point.ys[3]}
                width={18}
                height={Math.max(1, point.ys[1] - point.ys[3])}
              />
              <path className={styles.mean} d={uprightSpindle(point.highAt, point.lowAt, point.meanAt, point.x, 8)} />
              <path className={styles.middle} d={`M${point.x - 9} ${point.meanAt}h18`} />
              {point.keptAt === null ? null : (
                <rect className={styles.kept} x={point.x + 11} y={point.keptAt - 4} width={8} height={8} />
              )}
              <text className={styles.tick} x={point.x} y={bottom + 20} textAnchor="middle">
                {point.year}
              </text>
            </g>
          ))}
        </svg>
      </ScrollFrame>
      {keyed ? null : (
        <figcaption>
          <TraitOverYearsKey range={range !== null} />
        </figcaption>
      )}
    </figure>
  );
}

/** What stands for what in the picture; `range`: the type allows one. */
export function TraitOverYearsKey({ range }: { range: boolean }) {
  return (
    <p className={styles.says}>
      Thin: from the least plant to the greatest. Box: the middle half. Drawn out: the mean with its span. Full square:
      mean of those of which seed was kept.{range ? " Between the broken lines: what the type allows." : ""} No line
      joins the years: between them lies the weather.
    </p>
  );
}
