import { useId } from "react";
import { Hatch } from "@/components/doubt/hatch";
import { plainNumber } from "@/lib/display/numbers";
import { distance, type UnitSettings } from "@/lib/display/units";
import { type Plan, type PlanNeighbour, planReaches } from "./plan";
import { type DrawnNeighbour, lineLayout, type PlanLayout, planLayout, planSide } from "./plan-layout";
import styles from "./plot-plan.module.css";

const middle = planSide / 2;

/**
 * The plot plan: the plot in the middle, the rule's distances as rings about it, each neighbour at its bearing and gap with its size; what
 * has no bearing stands on a line of its own. North is up. Solid was seen, hatched is assumed or told, open has no known size.
 * `label` is the text twin; the table below says the same in words.
 */
export function PlotPlan({ plan, units, label }: { plan: Plan; units: UnitSettings; label: string }) {
  const [whole = 10, close] = planReaches(plan);
  const lost = plan.neighbours.some(({ bearing }) => bearing === null);
  return (
    <figure className={styles.plans}>
      <div className={styles.drawings}>
        <PlanDrawing plan={plan} reach={whole} units={units} label={label} />
        {close === undefined ? null : (
          <PlanDrawing
            plan={plan}
            reach={close}
            units={units}
            label={`The same, close by: the first ${distance(close, units)} about the plot.`}
          />
        )}
      </div>
      {lost ? <LostLine plan={plan} units={units} /> : null}
      <figcaption className={styles.says}>{saysOf(plan)}</figcaption>
    </figure>
  );
}

function PlanDrawing({ plan, reach, units, label }: { plan: Plan; reach: number; units: UnitSettings; label: string }) {
  const hatch = useId();
  const layout = planLayout(plan, reach);
  const { plot, rings, placed, rays, beyond, bar } = layout;
  return (
    <svg className={styles.plan} viewBox={`0 0 ${planSide} ${planSide + 26}`} role="img" aria-label={label}>
      <defs>
        <Hatch id={hatch} />
      </defs>
      {rings.map((ring) => (
        <g key={ring.name} className={styles.ring}>
          <rect
            x={middle - ring.half}
            y={middle - ring.half}
            width={2 * ring.half}
            height={2 * ring.half}
            rx={ring.radius}
          />
        </g>
      ))}
      {rays.map(({ neighbour, from, to, number }) => (
        <g key={neighbour.id} className={styles.lost}>
          <path d={`M${from.x} ${from.y}L${to.x} ${to.y}`} />
          <Numbered neighbour={neighbour} at={number} />
        </g>
      ))}
      <rect
        className={styles.plot}
        data-known={plot.known || undefined}
        x={middle - plot.side / 2}
        y={middle - plot.side / 2}
        width={plot.side}
        height={plot.side}
      />
      {placed.map((each) => (
        <Mark key={each.neighbour.id} drawn={each} hatch={hatch} />
      ))}
      {rings.map((ring) => (
        <text key={ring.name} className={styles.ringName} x={ring.x} y={ring.y + 4}>
          {ring.name}
        </text>
      ))}
      {placed.map(({ neighbour, number }) => (
        <Numbered key={neighbour.id} neighbour={neighbour} at={number} />
      ))}
      <path className={styles.north} d="M326 34V12M321 19L326 10L331 19" />
      <text className={styles.foot} x="326" y="48" textAnchor="middle">
        N
      </text>
      <path
        className={styles.north}
        d={`M6 ${planSide + 12}v6M6 ${planSide + 15}h${bar.length}M${6 + bar.length} ${planSide + 12}v6`}
      />
      <text className={styles.foot} x={12 + bar.length} y={planSide + 20}>
        {distance(bar.metres, units)}
      </text>
      <text className={styles.foot} x={planSide - 2} y={planSide + 20} textAnchor="end">
        {footOf(layout, beyond)}
      </text>
    </svg>
  );
}

/** What of the drawing is not to scale, and what lies outside it. */
function footOf({ plot, placed }: PlanLayout, beyond: readonly PlanNeighbour[]): string {
  const enlarged = placed.some(({ toScale, neighbour }) => !toScale && neighbour.sizeM2 !== null);
  const drawn = enlarged || (plot.known && !plot.toScale) ? "small ones drawn larger" : "";
  const outside = beyond.length > 0 ? `${beyond.map((each) => each.number).join(", ")} farther out` : "";
  return [drawn, outside].filter(Boolean).join("; ");
}

function Mark({ drawn: { neighbour, at, side }, hatch }: { drawn: DrawnNeighbour; hatch: string }) {
  const open = neighbour.sizeM2 === null;
  const fill = open ? "var(--paper)" : neighbour.grade === "assumed" ? `url(#${hatch})` : "var(--counted)";
  return (
    <rect
      className={styles.mark}
      data-weight={neighbour.weight}
      data-open={open || undefined}
      x={at.x - side / 2}
      y={at.y - side / 2}
      width={side}
      height={side}
      fill={fill}
    />
  );
}

function Numbered({ neighbour, at }: { neighbour: PlanNeighbour; at: { readonly x: number; readonly y: number } }) {
  return (
    <text className={styles.number} data-weight={neighbour.weight} x={at.x} y={at.y + 4.5}>
      {neighbour.number}
    </text>
  );
}

/** Neighbours whose side nobody wrote down: by their distance alone. */
function LostLine({ plan, units }: { plan: Plan; units: UnitSettings }) {
  const [from, to] = [8, 332];
  const { metres, marks } = lineLayout(plan, from, to);
  const rows = Math.max(...marks.map((mark) => mark.row)) + 1;
  const base = 34 + rows * 20;
  const end = to - 34;
  const spoken = marks
    .map(({ neighbour }) =>
      neighbour.distanceMetres === null
        ? `number ${neighbour.number} at an unknown distance`
        : `number ${neighbour.number} ${distance(neighbour.distanceMetres, units)} off`,
    )
    .join(", ");
  return (
    <svg
      className={styles.line}
      viewBox={`0 0 340 ${base + 22}`}
      role="img"
      aria-label={`On which side is not known: ${spoken}.`}
    >
      <text className={styles.foot} x={from} y="14">
        on which side is not known: by distance alone
      </text>
      <path className={styles.north} d={`M${from} ${base}H${end}M${from} ${base - 4}v8M${end} ${base - 4}v8`} />
      {plan.rings.map((ring) => (
        <path
          key={ring.name}
          className={styles.tick}
          d={`M${from + ((end - from) * ring.metres) / metres} ${base - 7}v14`}
        />
      ))}
      <text className={styles.foot} x={from} y={base + 17}>
        the plot
      </text>
      <text className={styles.foot} x={end} y={base + 17} textAnchor="middle">
        {distance(metres, units)}
      </text>
      {marks.some(({ neighbour }) => neighbour.distanceMetres === null) ? (
        <text className={styles.foot} x={to - 8} y={base + 4} textAnchor="middle">
          ?
        </text>
      ) : null}
      {marks.map(({ neighbour, x, row }) => (
        <g key={neighbour.id} className={styles.lost}>
          <circle cx={x} cy={base - 12 - row * 20} r="4.5" data-weight={neighbour.weight} />
          <Numbered neighbour={neighbour} at={{ x: x + 11, y: base - 12 - row * 20 }} />
        </g>
      ))}
    </svg>
  );
}

function saysOf({ plotM2, neighbours }: Plan): string {
  const plot =
    plotM2 === null
      ? "The area of the plot is not written: it is drawn open."
      : `The plot is drawn as a square of its ${plainNumber(plotM2)} m².`;
  if (neighbours.length === 0) return `${plot} No neighbour is on record.`;
  return `${plot} Distances run from edge to edge; neighbours are squares of their areas, hatched where told or assumed, open where no size is known.`;
}
