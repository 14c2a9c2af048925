import Link from "next/link";
import { useId } from "react";
import { Hatch } from "@/components/doubt/hatch";
import { uprightSpindle } from "@/components/doubt/spindle";
import { percent } from "@/lib/display/numbers";
import { type DescentLine, type DescentPoint, drawnLines, heightOf, levelsFor, yearEnds } from "./descent";
import styles from "./descent-over-years.module.css";
import { yearTicks } from "./points";

/** In pixels: the height of the field, and what lies above and below it. */
const field = 250;
const head = 22;
const foot = 28;

/**
 * What lots keep through the years, each tied to the lots that it came of, so that one sees where it was lost. Filled is counted, hatched
 * assumed, open unknown, drawn out a span; a thorn is foreign pollen. The lot spoken of has a ring and its name. Points lead on by hand; the
 * same stands in the table of the page for the ear, the printer and the keyboard.
 */
export function DescentOverYears({
  title,
  points,
  lines,
  chosen,
  children,
}: {
  title: string;
  points: readonly DescentPoint[];
  lines: readonly DescentLine[];
  chosen: string | null;
  /** a sentence below the title */
  children?: React.ReactNode;
}) {
  const hatch = useId();
  if (points.length === 0) return null;
  const years = points.map(({ year }) => year);
  const ticks = yearTicks(Math.min(...years), Math.max(...years), 6);
  const [first, last] = yearEnds(points, ticks);
  const levels = levelsFor(points);
  const floor = levels[0] ?? 0;
  const across = (year: number) => `${Math.round((10_000 * (year - first)) / (last - first)) / 100}%`;
  const up = (share: number) => head + field * (1 - (share - floor) / (1 - floor));
  return (
    <figure className={styles.figure}>
      <figcaption>
        <span className={styles.title}>{title}</span> <span className={styles.says}>{children}</span>
        {floor > 0 ? <span className={styles.says}> The scale begins at {percent(floor)}.</span> : null}
      </figcaption>
      <div className={styles.frame} style={{ blockSize: head + field + foot }} aria-hidden="true">
        {levels.map((level) => (
          <span key={level} className={styles.level} style={{ insetBlockStart: up(level) }}>
            {percent(level)}
          </span>
        ))}
        <svg className={styles.chart} height={head + field + foot} aria-hidden="true" focusable="false">
          <defs>
            <Hatch id={hatch} gap={3.5} />
          </defs>
          {levels.map((level) => (
            <line key={level} className={styles.rule} x1="0" x2="100%" y1={up(level)} y2={up(level)} />
          ))}
          <line className={styles.axis} x1="0" x2="100%" y1={up(floor)} y2={up(floor)} />
          {ticks.map((year) => (
            <text key={year} className={styles.year} x={across(year)} y={head + field + 20} textAnchor="middle">
              {year}
            </text>
          ))}
          {drawnLines(points, lines).map(({ from, to, dashed }) => (
            <line
              key={`${from.id}:${to.id}`}
              className={styles.stroke}
              x1={across(from.year)}
              y1={up(heightOf(from) ?? floor)}
              x2={across(to.year)}
              y2={up(heightOf(to) ?? floor)}
              strokeDasharray={dashed ? "5 3" : undefined}
            />
          ))}
          {points.map((point) => (
            <svg key={point.id} x={across(point.year)} overflow="visible">
              <title>{point.words}</title>
              <Link href={point.href} tabIndex={-1} scroll={false}>
                <Mark point={point} up={up} floor={floor} hatch={hatch} chosen={point.id === chosen} />
              </Link>
            </svg>
          ))}
          {points
            .filter(({ id }) => id === chosen)
            .map((point) => (
              <Name
                key={point.id}
                name={point.name}
                x={across(point.year)}
                y={up(heightOf(point) ?? floor)}
                left={(point.year - first) / (last - first) > 0.6}
              />
            ))}
        </svg>
      </div>
    </figure>
  );
}

function Mark({
  point,
  up,
  floor,
  hatch,
  chosen,
}: {
  point: DescentPoint;
  up: (share: number) => number;
  floor: number;
  hatch: string;
  chosen: boolean;
}) {
  const { value, low, high, grade, foreign } = point;
  const height = heightOf(point);
  const open = grade === "unknown";
  const fill = open ? "var(--paper)" : grade === "assumed" ? `url(#${hatch})` : "var(--counted)";
  const y = height === null ? up((1 + floor) / 2) : up(height);
  return (
    <g>
      {height === null ? (
        <path
          d={uprightSpindle(up(1), up(floor), y, 0, 9)}
          fill="var(--paper)"
          stroke="var(--unknown)"
          strokeDasharray="2.5 3"
        />
      ) : null}
      {low !== null && high !== null && value === null ? (
        <path
          d={uprightSpindle(up(high), up(low), y, 0, 11)}
          fill={fill}
          stroke={open ? "var(--unknown)" : "var(--counted)"}
        />
      ) : null}
      {value !== null ? (
        <circle
          cx="0"
          cy={y}
          r="4.5"
          fill={grade === "counted" ? "var(--ink)" : "var(--paper)"}
          stroke="var(--ink)"
          strokeWidth="1.75"
        />
      ) : null}
      {value !== null && grade === "assumed" ? <circle cx="0" cy={y} r="4.5" fill={fill} /> : null}
      {foreign ? <path className={styles.thorn} d={`M5 ${y - 5}l8 -9l-3 11z`} /> : null}
      {chosen ? <circle className={styles.ring} cx="0" cy={y} r="9" /> : null}
      <circle cx="0" cy={y} r="14" fill="transparent" />
    </g>
  );
}

function Name({ name, x, y, left }: { name: string; x: string; y: number; left: boolean }) {
  return (
    <svg x={x} overflow="visible" aria-hidden="true">
      <text className={styles.name} x={left ? -14 : 14} y={y + 26} textAnchor={left ? "end" : "start"}>
        {name}
      </text>
    </svg>
  );
}
