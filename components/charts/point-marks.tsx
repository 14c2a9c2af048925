"use client";

import { useId } from "react";
import { usePlotArea, useXAxisScale, useYAxisScale } from "recharts";
import { Hatch } from "@/components/doubt/hatch";
import { uprightSpindle } from "@/components/doubt/spindle";
import { type Box, placedNames } from "./name-places";
import styles from "./over-years.module.css";
import { inOrder, strokes, type YearPoint, type YearSeries } from "./points";

/** The marks of doubt on the chart's own scales: spans as soft-ended bars, values as dots, unknown as open rings. */
export function PointMarks({ series, named }: { series: readonly YearSeries[]; named: boolean }) {
  const hatch = useId();
  const across = useXAxisScale();
  const up = useYAxisScale();
  const area = usePlotArea();
  if (!across || !up || !area) return null;
  const x = (point: YearPoint) => across(point.year) ?? 0;
  const y = (value: number) => up(value) ?? 0;
  return (
    <g>
      <defs>
        <Hatch id={hatch} gap={3.5} />
      </defs>
      {series.map((each) => (
        <g key={each.name}>
          {strokes(each.points).map(({ from, to, dashed }) => (
            <path
              key={`${from.words}:${to.words}`}
              className={styles.stroke}
              d={`M${x(from)} ${y(from.value ?? 0)}L${x(to)} ${y(to.value ?? 0)}`}
              strokeDasharray={dashed ? "5 3" : undefined}
            />
          ))}
        </g>
      ))}
      {series.map((each) => (
        <g key={each.name}>
          {each.points.map((point) => (
            <Mark
              key={point.words}
              point={point}
              x={x(point)}
              y={y}
              top={area.y}
              foot={area.y + area.height}
              hatch={hatch}
            />
          ))}
        </g>
      ))}
      {named ? <Names series={series} x={x} y={y} area={area} /> : null}
    </g>
  );
}

function Mark({
  point,
  x,
  y,
  top,
  foot,
  hatch,
}: {
  point: YearPoint;
  x: number;
  y: (value: number) => number;
  top: number;
  foot: number;
  hatch: string;
}) {
  const { value, low = null, high = null, grade } = point;
  const open = value === null || grade === "unknown";
  const fill = open ? "var(--paper)" : grade === "assumed" ? `url(#${hatch})` : "var(--counted)";
  const line = open ? "var(--unknown)" : "var(--counted)";
  if (value === null && (low === null || high === null)) {
    // nothing bounds it: open from the foot to the top
    const open = uprightSpindle(top, foot, (top + foot) / 2, x, 9);
    return <path d={open} fill="var(--paper)" stroke="var(--unknown)" strokeDasharray="2.5 3" />;
  }
  const middle = value ?? ((low ?? 0) + (high ?? 0)) / 2;
  return (
    <g>
      {low !== null && high !== null && high > low ? (
        <path
          d={uprightSpindle(y(high), y(low), y(middle), x, 11)}
          fill={fill}
          fillOpacity={open ? 1 : 0.85}
          stroke={line}
          strokeDasharray={open ? "2.5 2" : undefined}
        />
      ) : null}
      {value === null ? null : (
        <circle
          cx={x}
          cy={y(value)}
          r="4"
          fill={grade === "counted" ? "var(--ink)" : "var(--paper)"}
          stroke="var(--ink)"
          strokeWidth="1.75"
        />
      )}
    </g>
  );
}

/** A series is named at its last value, so that no key and no colour is needed. */
function Names({
  series,
  x,
  y,
  area,
}: {
  series: readonly YearSeries[];
  x: (point: YearPoint) => number;
  y: (value: number) => number;
  area: { readonly x: number; readonly y: number; readonly width: number; readonly height: number };
}) {
  const wanted = series.flatMap(({ name, points }) => {
    const last = inOrder(points).findLast((point) => point.value !== null);
    return last?.value == null ? [] : [{ name, x: x(last), y: y(last.value) }];
  });
  const marks = series.flatMap(({ points }) =>
    points.flatMap(({ value, low, high, ...point }): Box[] => {
      const ends = [value, low, high].filter((each) => each != null).map(y);
      if (ends.length === 0) return [];
      const at = x({ ...point, value });
      return [{ left: at - 7, right: at + 7, top: Math.min(...ends) - 5, bottom: Math.max(...ends) + 5 }];
    }),
  );
  // names may stand a little over the topmost line, where full marks are
  const room = { left: area.x, right: area.x + area.width, top: area.y - 12, bottom: area.y + area.height };
  return placedNames(wanted, marks, room).map(({ name, at, moved, ...value }) => (
    <g key={name}>
      {moved ? (
        <path
          className={styles.leader}
          d={`M${value.x} ${value.y}L${at.x + (at.anchor === "start" ? -3 : 3)} ${at.y - 4}`}
        />
      ) : null}
      <text className={styles.name} x={at.x} y={at.y} textAnchor={at.anchor}>
        {name}
      </text>
    </g>
  ));
}
