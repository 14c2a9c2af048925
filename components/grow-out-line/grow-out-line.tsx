import { useId } from "react";
import { Hatch } from "@/components/doubt/hatch";
import { spindle } from "@/components/doubt/spindle";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import styles from "./grow-out-line.module.css";
import {
  dayTicks,
  type LineScale,
  lineScale,
  marksOf,
  namesWithRoom,
  narrowLine,
  placeOf,
  type Tick,
  ticksOf,
  wideLine,
} from "./line-scale";
import type { LineStage } from "./line-stage";

/** What each sign means, for those who hear it. */
const heard = { counted: "on record", assumed: "to be expected", unknown: "not known" } as const;

/**
 * The life of a grow-out as a stem that grows down its stages, each at its days: solid where it is on record, hatched where it is to be expected,
 * open where nobody knows. A line across shows today; `open` where its life goes on.
 */
export function GrowOutLine({
  stages,
  today,
  open,
  origin = null,
  label,
}: {
  stages: readonly LineStage[];
  today: CivilDay;
  open: boolean;
  /** where the beginning has no day yet: a day that stands in for it, from which days are counted */
  origin?: CivilDay | null;
  label: string;
}) {
  const hatch = useId();
  const clip = useId();
  const scale = lineScale(stages, today, open && origin === null);
  const now = open && origin === null ? today : null;
  const ticks = scale === null ? [] : origin === null ? ticksOf(scale) : dayTicks(scale, origin);
  const marks = scale ? marksOf(stages, scale) : stages.map(() => 0.5);
  return (
    <div className={styles.line}>
      <svg className={styles.defs} aria-hidden="true" width="0" height="0">
        <defs>
          <Hatch id={hatch} gap={4} />
          <clipPath id={clip} clipPathUnits="objectBoundingBox">
            <path d={spindle(0, 1, 0.5, 0.5, 1)} />
          </clipPath>
        </defs>
      </svg>
      {scale ? <Scale scale={scale} ticks={ticks} today={now} /> : null}
      <ol className={styles.stages} aria-label={label}>
        {stages.map((stage, index) => (
          <li key={stage.id} className={styles.stage}>
            <p className={styles.words}>
              <span className={styles.name}>{stage.name}</span>
              <span className={styles.when}>
                {stage.when}
                <span className="heard">, {heard[stage.grade]}</span>
              </span>
              {stage.note ? <span className={styles.when}>{stage.note}</span> : null}
            </p>
            <div className={styles.track}>
              <svg aria-hidden="true">
                {scale ? <Strokes scale={scale} ticks={ticks} today={now} /> : null}
                <Stem stages={stages} marks={marks} index={index} />
                <Mark stage={stage} scale={scale} at={marks[index] ?? 0.5} hatch={hatch} clip={clip} />
              </svg>
            </div>
          </li>
        ))}
      </ol>
    </div>
  );
}

const middle = 24;

function part(share: number): string {
  return `${Math.round(share * 10_000) / 100}%`;
}

function Scale({ scale, ticks, today }: { scale: LineScale; ticks: readonly Tick[]; today: CivilDay | null }) {
  const now = today === null ? null : placeOf(today, scale);
  const narrow = namesWithRoom(ticks, scale, today, narrowLine);
  const wide = namesWithRoom(ticks, scale, today, wideLine);
  return (
    <div className={styles.scale} aria-hidden="true">
      {ticks.map(({ day, label }) =>
        narrow.has(day) || wide.has(day) ? (
          <span
            key={day}
            data-line={narrow.has(day) ? (wide.has(day) ? undefined : "narrow") : "wide"}
            style={{ insetInlineStart: part(placeOf(day, scale)) }}
          >
            {label}
          </span>
        ) : null,
      )}
      {now === null ? null : (
        <span className={styles.today} style={{ insetInlineStart: part(Math.min(now, 0.94)) }}>
          today
        </span>
      )}
    </div>
  );
}

function Strokes({ scale, ticks, today }: { scale: LineScale; ticks: readonly Tick[]; today: CivilDay | null }) {
  return (
    <>
      {ticks.map(({ day, label }) => (
        <line
          key={day}
          x1={part(placeOf(day, scale))}
          x2={part(placeOf(day, scale))}
          y1="0"
          y2="100%"
          stroke="var(--rule)"
          strokeWidth="1"
          strokeDasharray={label ? undefined : "1 5"}
        />
      ))}
      {today === null ? null : (
        <line
          x1={part(placeOf(today, scale))}
          x2={part(placeOf(today, scale))}
          y1="0"
          y2="100%"
          stroke="var(--waiting)"
          strokeWidth="1.5"
        />
      )}
    </>
  );
}

/** The stem comes from the mark above, bends to this one and goes on down. Where it has grown it is whole, where it has not it is broken. */
function Stem({ stages, marks, index }: { stages: readonly LineStage[]; marks: readonly number[]; index: number }) {
  const at = part(marks[index] ?? 0.5);
  const before = index === 0 ? null : part(marks[index - 1] ?? 0.5);
  // A life that came to a stage has come through those before it, whether or not anybody wrote of them.
  const grownTo = stages.findLastIndex((stage) => stage.grade === "counted");
  const strokeTo = (to: number) =>
    to <= grownTo
      ? { stroke: "var(--counted)", strokeWidth: 2.5 }
      : { stroke: "var(--unknown)", strokeWidth: 1.5, strokeDasharray: "2 4" };
  return (
    <>
      {before === null ? null : (
        <>
          <line x1={before} x2={before} y1="0" y2={middle} {...strokeTo(index)} />
          <line x1={before} x2={at} y1={middle} y2={middle} {...strokeTo(index)} />
        </>
      )}
      {index === stages.length - 1 ? null : <line x1={at} x2={at} y1={middle} y2="100%" {...strokeTo(index + 1)} />}
    </>
  );
}

function Mark({
  stage,
  scale,
  at,
  hatch,
  clip,
}: {
  stage: LineStage;
  scale: LineScale | null;
  at: number;
  hatch: string;
  clip: string;
}) {
  const { first, last, grade } = stage;
  if (!scale || first === null || last === null || grade === "unknown") {
    const solid = grade === "counted";
    return (
      <circle
        cx={part(at)}
        cy={middle}
        r="6"
        fill={solid ? "var(--counted)" : "var(--ground)"}
        stroke={solid ? "var(--counted)" : "var(--unknown)"}
        strokeWidth="1.5"
        strokeDasharray={solid ? undefined : "2.5 2"}
      />
    );
  }
  const low = placeOf(first, scale);
  const high = placeOf(last, scale);
  if (grade === "counted" && high - low < 0.035)
    return <circle cx={part(at)} cy={middle} r="6" fill="var(--counted)" />;
  const place = { x: part(low), width: part(Math.max(high - low, 0.03)), y: middle - 7, height: 14 };
  return (
    <>
      {grade === "assumed" ? (
        <>
          <rect {...place} fill="var(--ground)" clipPath={`url(#${clip})`} />
          <rect {...place} fill={`url(#${hatch})`} clipPath={`url(#${clip})`} />
        </>
      ) : null}
      <svg {...place} viewBox="0 0 100 14" preserveAspectRatio="none" aria-hidden="true">
        <path
          d={spindle(0, 100, 50, 7, 14)}
          fill={grade === "counted" ? "var(--counted)" : "none"}
          stroke="var(--counted)"
          strokeWidth="1"
          vectorEffect="non-scaling-stroke"
        />
      </svg>
    </>
  );
}
