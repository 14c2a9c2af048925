/**
 * The outline of a soft-ended bar from x = `low` to x = `high` about the line y: thickest (`thickness`) at `at`,
 * drawn out to nothing at both ends, so that it prints in black and white without a tint.
 */
export function spindle(low: number, high: number, at: number, y: number, thickness: number): string {
  const half = thickness / 2;
  const left = at - low;
  const right = high - at;
  const up = y - half;
  const down = y + half;
  return [
    `M${fixed(low)} ${fixed(y)}`,
    `C${fixed(low + left * 0.5)} ${fixed(y)} ${fixed(at - left * 0.45)} ${fixed(up)} ${fixed(at)} ${fixed(up)}`,
    `C${fixed(at + right * 0.45)} ${fixed(up)} ${fixed(high - right * 0.5)} ${fixed(y)} ${fixed(high)} ${fixed(y)}`,
    `C${fixed(high - right * 0.5)} ${fixed(y)} ${fixed(at + right * 0.45)} ${fixed(down)} ${fixed(at)} ${fixed(down)}`,
    `C${fixed(at - left * 0.45)} ${fixed(down)} ${fixed(low + left * 0.5)} ${fixed(y)} ${fixed(low)} ${fixed(y)}Z`,
  ].join("");
}

/** The same, upright: from y = `low` to y = `high` about the line x. */
export function uprightSpindle(low: number, high: number, at: number, x: number, thickness: number): string {
  return spindle(low, high, at, x, thickness).replace(/(-?[\d.]+) (-?[\d.]+)/g, "$2 $1");
}

function fixed(value: number): number {
  return Math.round(value * 100) / 100;
}
