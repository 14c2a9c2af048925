"use client";

import { type ReactNode, useMemo } from "react";
import { CartesianGrid, ComposedChart, Line, ReferenceLine, Tooltip, XAxis, YAxis } from "recharts";
import { SimpleTable } from "@/components/tables/simple-table";
import { percent } from "@/lib/display/numbers";
import styles from "./over-years.module.css";
import { PointMarks } from "./point-marks";
import { inOrder, type YearSeries, yearAxis } from "./points";

const shares = [0, 0.25, 0.5, 0.75, 1];

/**
 * A share (0..1) through the years: diversity retained, germination. Each point carries its span and how it is known; `lines`
 * are levels to compare with (a renewal line). The same figures stand in a table below, for the ear, the printer and the pen.
 */
export function OverYears({
  title,
  series,
  lines = [],
  floor = 0,
  children,
}: {
  title: string;
  series: readonly YearSeries[];
  lines?: readonly { readonly at: number; readonly name: string }[];
  /** where the upright scale begins, for figures that all lie high: said in the caption when it is not 0 */
  floor?: number;
  /** a sentence below the title */
  children?: ReactNode;
}) {
  const points = useMemo(() => inOrder(series.flatMap((each) => each.points)), [series]);
  const first = points[0]?.year ?? 0;
  const last = points.at(-1)?.year ?? 0;
  const { ends, ticks } = yearAxis(first, last, 7);
  if (points.length === 0) return null;
  return (
    <figure className={styles.figure}>
      <figcaption>
        <span className={styles.title}>{title}</span>
        {children ? <span className={styles.says}> {children}</span> : null}
        {floor > 0 ? <span className={styles.says}> The scale begins at {percent(floor)}.</span> : null}
      </figcaption>
      <div className={styles.chart} aria-hidden="true">
        <ComposedChart
          responsive
          style={{ width: "100%", height: "100%" }}
          data={[...points]}
          margin={{ top: 14, right: 8, bottom: 4, left: 0 }}
          accessibilityLayer={false}
        >
          <CartesianGrid vertical={false} stroke="var(--rule)" strokeWidth={1} />
          <XAxis
            dataKey="year"
            type="number"
            domain={ends}
            ticks={ticks}
            tickFormatter={String}
            tickLine={{ stroke: "var(--ink)" }}
            axisLine={{ stroke: "var(--ink)", strokeWidth: 1.5 }}
            tick={{ className: styles.tick, fill: "var(--ink-quiet)" }}
            allowDataOverflow
          />
          <YAxis
            type="number"
            domain={[floor, 1]}
            ticks={shares.filter((share) => share >= floor)}
            tickFormatter={(share: number) => percent(share)}
            width={50}
            tickLine={false}
            axisLine={false}
            tick={{ className: styles.tick, fill: "var(--ink-quiet)" }}
          />
          {lines.map((line) => (
            <ReferenceLine
              key={line.name}
              y={line.at}
              stroke="var(--waiting)"
              label={{
                value: line.name,
                position: "insideBottomLeft",
                className: styles.level,
                fill: "var(--waiting)",
              }}
            />
          ))}
          <Line dataKey="value" stroke="none" dot={false} activeDot={false} isAnimationActive={false} />
          <PointMarks series={series} named={series.length > 1} />
          <Tooltip
            isAnimationActive={false}
            cursor={{ stroke: "var(--edge)", strokeDasharray: "2 3" }}
            content={({ active, payload }) => {
              const words: unknown = payload?.[0]?.payload?.words;
              return active && typeof words === "string" ? <p className={styles.tip}>{words}</p> : null;
            }}
          />
        </ComposedChart>
      </div>
      <details className={styles.twin}>
        <summary>The same in figures</summary>
        <SimpleTable
          columns={[
            ...(series.length > 1 ? [{ key: "name", name: "" }] : []),
            { key: "year", name: "Year" },
            { key: "words", name: title },
            { key: "known", name: "Known by" },
          ]}
          rows={series.flatMap((each) =>
            inOrder(each.points).map((point) => ({
              id: `${each.name}:${point.words}`,
              cells: {
                name: each.name,
                year: String(Math.floor(point.year)),
                words: point.words,
                known: { counted: "counting", assumed: "assumption", unknown: "unknown" }[point.grade],
              },
            })),
          )}
        />
      </details>
    </figure>
  );
}
