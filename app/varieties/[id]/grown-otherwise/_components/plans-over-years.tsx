import { uprightSpindle } from "@/components/doubt/spindle";
import { percent } from "@/lib/display/numbers";
import type { Ends } from "@/lib/science/lineage/span-lots";
import { isSpan, leftInWords } from "../_words/plan-words";
import styles from "./plans-over-years.module.css";

/** A plan's diversity through the years: from a year on, what is left (0..1). */
export interface PlanLine {
  readonly name: string;
  /** the plan that is tried out is drawn strongly, the one of today lightly */
  readonly strong: boolean;
  /** what the seed that is sown holds */
  readonly start: Ends | null;
  readonly steps: readonly { readonly year: number; readonly left: Ends | null }[];
}

const field = 220;
const head = 18;
const foot = 28;

/** Two plans side by side for the years ahead: each grow-out is a step down. */
export function PlansOverYears({ lines, years }: { lines: readonly PlanLine[]; years: number }) {
  const values = lines
    .flatMap(({ start, steps }) => [start, ...steps.map(({ left }) => left)])
    .flatMap((left) => left?.low ?? []);
  if (values.length === 0) return null;
  const floor = Math.min(0.75, Math.max(0, Math.floor((Math.min(...values) - 0.02) * 4) / 4));
  const up = (share: number) => head + field * (1 - (share - floor) / (1 - floor));
  const across = (year: number) => `${(100 * year) / years}%`;
  const levels = [0, 0.25, 0.5, 0.75, 1, ...(floor >= 0.75 ? [0.8, 0.85, 0.9, 0.95] : [])].filter((l) => l >= floor);
  const names = placeNames(lines, years, up);
  const spanned = lines.some(({ steps }) => steps.some(({ left }) => isSpan(left)));
  return (
    <figure>
      <figcaption className={styles.says}>
        Diversity kept in the years to come. Each step is a grow-out.
        {spanned ? " The line is what can be counted on; drawn out, up to what the records allow at best." : ""}
        {floor > 0 ? ` The scale begins at ${percent(floor)}.` : ""}
      </figcaption>
      <div className={styles.frame} style={{ blockSize: head + field + foot }} aria-hidden="true">
        {levels.map((level) => (
          <span key={level} className={styles.level} style={{ insetBlockStart: up(level) }}>
            {percent(level)}
          </span>
        ))}
        <svg className={styles.chart} height={head + field + foot} aria-hidden="true" focusable="false">
          {levels.map((level) => (
            <line key={level} className={styles.rule} x1="0" x2="100%" y1={up(level)} y2={up(level)} />
          ))}
          <line className={styles.axis} x1="0" x2="100%" y1={up(floor)} y2={up(floor)} />
          {[0, 10, 20, 30]
            .filter((year) => year <= years)
            .map((year) => (
              <text
                key={year}
                className={styles.year}
                x={across(year)}
                y={head + field + 20}
                textAnchor={year === 0 ? "start" : year === years ? "end" : "middle"}
              >
                {year === 0 ? "now" : `in ${year} years`}
              </text>
            ))}
          {lines.map((line) => (
            <Stairs key={line.name} line={line} up={up} across={across} years={years} />
          ))}
          {lines.map((line, i) =>
            names[i] === null ? null : (
              <text
                key={line.name}
                className={line.strong ? styles.strongName : styles.name}
                x="100%"
                y={names[i]}
                textAnchor="end"
              >
                {line.name}, {leftInWords(line.steps.at(-1)?.left ?? null)}
              </text>
            ),
          )}
        </svg>
      </div>
    </figure>
  );
}

/** Where the name of each line stands: the higher line's above all that lies under it, the lower one's below, or above where the axis is near. */
function placeNames(lines: readonly PlanLine[], years: number, up: (share: number) => number): (number | null)[] {
  const apart = 18;
  const ends = lines.map(({ steps }) => steps.at(-1)?.left?.low ?? null);
  const found = lines.map(({ steps }, i): number | null => {
    const end = ends[i] ?? null;
    const other = ends[1 - i] ?? null;
    if (end === null) return null;
    const above = other !== null && (end > other || (end === other && i === 0));
    if (!above && up(end) + 24 <= head + field) return up(end) + 20;
    // Stairs go down to the right: above them a name keeps clear of the highest step over which it stands.
    const over = steps.flatMap(({ year, left }) => (year > 0.45 * years ? (left?.high ?? 0) : []));
    return Math.max(head - 4, up(Math.max(end, ...over)) - 8);
  });
  const [one = null, other = null] = found;
  if (one === null || other === null || Math.abs(one - other) >= apart) return found;
  const higher = (ends[0] ?? 0) >= (ends[1] ?? 0) ? 0 : 1;
  const lower = Math.max(found[1 - higher] ?? 0, head - 4 + apart);
  return higher === 0 ? [lower - apart, lower] : [lower, lower - apart];
}

function Stairs({
  line: { start, steps, strong },
  up,
  across,
  years,
}: {
  line: PlanLine;
  up: (share: number) => number;
  across: (year: number) => string;
  years: number;
}) {
  const style = strong ? styles.strong : styles.light;
  return (
    <g>
      {steps.map(({ year, left }, i) => {
        const before = (i === 0 ? start : steps[i - 1]?.left)?.low ?? null;
        if (left === null) return null;
        const until = steps[i + 1]?.year ?? years;
        const [least, most] = [up(left.low), up(left.high)];
        return (
          <g key={year}>
            {isSpan(left) ? (
              <svg x={across(year + (until - year) * (strong ? 0.6 : 0.35))} overflow="visible" aria-hidden="true">
                <path
                  className={strong ? styles.span : styles.lightSpan}
                  d={uprightSpindle(most, least, (most + least) / 2, 0, 7)}
                />
              </svg>
            ) : null}
            {before === null ? null : (
              <line className={style} x1={across(year)} x2={across(year)} y1={up(before)} y2={least} />
            )}
            <line className={style} x1={across(year)} x2={across(until)} y1={least} y2={least} />
          </g>
        );
      })}
    </g>
  );
}
