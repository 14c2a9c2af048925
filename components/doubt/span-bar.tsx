import { useId } from "react";
import type { Grade } from "./grade";
import { Hatch } from "./hatch";
import { spindle } from "./spindle";

const inset = 4;

/**
 * A figure on a line from one end of `scale` to the other (default 0 to 1), its span a soft-ended bar.
 * counted: solid; assumed: hatched; unknown, or no value: open. `label` is the text twin, a whole phrase
 * ("82 %, between 76 and 87 %"). `line` is a level to compare with, drawn across.
 */
export function SpanBar({
  value,
  low = null,
  high = null,
  grade,
  label,
  scale = [0, 1],
  line,
  width = 120,
  height = 18,
}: {
  value: number | null;
  low?: number | null;
  high?: number | null;
  grade: Grade;
  label: string;
  scale?: readonly [number, number];
  line?: number;
  width?: number;
  height?: number;
}) {
  const hatch = useId();
  const [from, to] = scale;
  const across = (at: number) => {
    const share = to === from ? 0.5 : Math.min(1, Math.max(0, (at - from) / (to - from)));
    return inset + share * (width - 2 * inset);
  };
  const y = height / 2;
  const thickness = height * 0.5;
  const known = low !== null || high !== null || value !== null;
  const left = low === null ? null : across(low);
  const right = high === null ? null : across(high);
  const at = value === null ? null : across(value);
  const open = grade === "unknown" || at === null;
  const fill = open ? "var(--paper)" : grade === "assumed" ? `url(#${hatch})` : "var(--counted)";
  const stroke = open ? "var(--unknown)" : "var(--counted)";
  return (
    <svg width={width} height={height} viewBox={`0 0 ${width} ${height}`} role="img" aria-label={label}>
      {grade === "assumed" ? (
        <defs>
          <Hatch id={hatch} gap={3.5} />
        </defs>
      ) : null}
      <path
        d={`M${inset} ${y}H${width - inset}`}
        stroke="var(--unknown)"
        strokeWidth="1"
        strokeDasharray={known ? undefined : "1 4"}
      />
      <path d={`M${inset} ${y - 3}v6M${width - inset} ${y - 3}v6`} stroke="var(--unknown)" strokeWidth="1" />
      {line === undefined ? null : (
        <path d={`M${across(line)} 0v${height}`} stroke="var(--waiting)" strokeWidth="1.25" />
      )}
      {left !== null && right !== null && right - left > 1 ? (
        <path
          d={spindle(left, right, at ?? (left + right) / 2, y, thickness)}
          fill={fill}
          stroke={stroke}
          strokeWidth="1"
          strokeDasharray={open ? "2.5 2" : undefined}
        />
      ) : null}
      {at === null ? null : (
        <path
          d={`M${at} ${y - thickness / 2 - 1.5}V${y + thickness / 2 + 1.5}`}
          stroke="var(--ink)"
          strokeWidth="2.25"
        />
      )}
      {known ? null : (
        <circle
          cx={width / 2}
          cy={y}
          r={thickness / 2.4}
          fill="var(--paper)"
          stroke="var(--unknown)"
          strokeWidth="1.25"
        />
      )}
    </svg>
  );
}
