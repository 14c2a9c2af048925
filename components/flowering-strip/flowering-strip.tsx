import { useId } from "react";
import { Hatch } from "@/components/doubt/hatch";
import { monthName } from "@/lib/display/dates";
import { splitCivilDay } from "@/lib/science/dates/civil-day";
import styles from "./flowering-strip.module.css";
import type { StripRow } from "./strip";
import { type DrawnBar, type DrawnRow, stripLayout, stripWidth } from "./strip-layout";

const longest = 40;

/**
 * The flowering strip: the windows of this grow-out over those of its neighbours, by the day. Thick solid: noted; hatched: told or assumed;
 * tapered: an end known to some days; dashed and open: an end that nobody noted. The framed hatching is what falls together with the
 * grow-out's stigmas. `label` is the text twin. Nothing where no day is known.
 */
export function FloweringStrip({ rows, label }: { rows: readonly StripRow[]; label: string }) {
  const hatch = useId();
  const layout = stripLayout(rows);
  if (layout === null) return null;
  return (
    <svg className={styles.strip} viewBox={`0 0 ${stripWidth} ${layout.height}`} role="img" aria-label={label}>
      <defs>
        <Hatch id={`${hatch}-told`} gap={4} />
        <Hatch id={`${hatch}-common`} gap={7} stroke="var(--ink)" />
      </defs>
      {layout.ticks.map(({ x, day, month }, index) => (
        <g key={day} className={month ? styles.month : styles.week}>
          <path d={`M${x} ${month ? 6 : 18}V24${month ? behindBars(x, layout.rows) : ""}`} />
          {month ? (
            <text x={x + 4} y="14">
              {monthName(splitCivilDay(day)?.month ?? 0)}
            </text>
          ) : (
            <text x={x} y="14" textAnchor={index === 0 ? "start" : "middle"}>
              {splitCivilDay(day)?.day}
              {index === 0 ? ` ${monthName(splitCivilDay(day)?.month ?? 0)}` : ""}
            </text>
          )}
        </g>
      ))}
      {layout.guides.map((x) => (
        <path key={x} className={styles.guide} d={behindBars(x, layout.rows)} />
      ))}
      {layout.rows.map((drawn) => (
        <Row key={drawn.row.id} drawn={drawn} hatch={hatch} />
      ))}
    </svg>
  );
}

/** A line down through the bars, broken where the names stand. */
function behindBars(x: number, rows: readonly DrawnRow[]): string {
  return rows.map(({ barY }) => `M${x} ${barY - 8}v17`).join("");
}

function Row({ drawn: { row, nameY, barY, bar, common }, hatch }: { drawn: DrawnRow; hatch: string }) {
  const half = row.of === "neighbour" ? 3 : 4.5;
  const fill = row.grade === "counted" ? "var(--counted)" : `url(#${hatch}-told)`;
  return (
    <g>
      {common ? (
        <rect
          className={styles.common}
          x={common.from}
          y={barY - 7.5}
          width={common.to - common.from}
          height="15"
          fill={`url(#${hatch}-common)`}
        />
      ) : null}
      <path className={styles.ends} d={openEnds(bar, barY, half)} />
      <path className={styles.bar} d={outline(bar, barY, half)} fill={fill} />
      <text className={styles.name} data-own={row.of === "neighbour" ? undefined : true} x="4" y={nameY}>
        {row.name.length > longest ? `${row.name.slice(0, longest - 1)}…` : row.name}
      </text>
      {row.says ? (
        <text className={styles.saying} x={stripWidth - 4} y={nameY} textAnchor="end">
          {row.says}
        </text>
      ) : null}
    </g>
  );
}

/** The known part of a window: full between its inner ends, drawn out to a point at an end that is known to some days only. */
function outline(
  { outerFrom, innerFrom, innerTo, outerTo, openFrom, openTo }: DrawnBar,
  y: number,
  half: number,
): string {
  if (innerFrom > innerTo && (openFrom || openTo)) return "";
  const from = openFrom ? innerFrom : outerFrom;
  const to = openTo ? innerTo : outerTo;
  // Ends so vague that nothing is sure between them leave a spindle.
  const [a, b] = innerFrom <= innerTo ? [innerFrom, innerTo] : [(from + to) / 2, (from + to) / 2];
  return `M${from} ${y}L${a} ${y - half}H${b}L${to} ${y}L${b} ${y + half}H${a}Z`;
}

function openEnds(
  { outerFrom, innerFrom, innerTo, outerTo, openFrom, openTo }: DrawnBar,
  y: number,
  half: number,
): string {
  const before = openFrom ? `M${innerFrom} ${y - half}H${outerFrom}M${innerFrom} ${y + half}H${outerFrom}` : "";
  const after = openTo ? `M${innerTo} ${y - half}H${outerTo}M${innerTo} ${y + half}H${outerTo}` : "";
  return before + after;
}
