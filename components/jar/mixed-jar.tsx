import { useId } from "react";
import type { Grade } from "@/components/doubt/grade";
import { Hatch } from "@/components/doubt/hatch";
import { percent } from "@/lib/display/numbers";
import { listed } from "@/lib/display/plurals";
import { glass } from "./glass";
import styles from "./jar.module.css";
import { partLabels } from "./jar-levels";

/** What one lot makes up of a mix. */
export interface MixedLayer {
  readonly name: string;
  /** of the living seeds, 0 to 1 */
  readonly share: number;
  /** counted: by a test; assumed: by a test too old, or by somebody's word */
  readonly grade: Grade;
}

const full = 84;
const gap = 26;

/**
 * A jar with the lots of a mix in layers, each as high as its share of the living seeds: full where a test says what lives, hatched where
 * it is assumed. The jar stands open where the shares are not known (no layers).
 */
export function MixedJar({ layers }: { layers: readonly MixedLayer[] }) {
  const id = useId();
  const drawn = stacked(layers);
  const places = partLabels(
    drawn.map((layer) => (layer.from + layer.to) / 2 + 5),
    gap,
    glass.bottom - 2,
  );
  const words = layers.map((layer) => `lot ${layer.name} ${percent(layer.share)}`);
  const label = layers.length === 0 ? "a jar, the shares in it not known" : `a jar mixed of ${listed(words)}`;
  const tall = Math.min(0, ...places.map((place) => place - 16));
  return (
    <svg className={styles.jar} viewBox={`0 ${tall} 340 ${262 - tall}`} role="img" aria-label={label}>
      <defs>
        <clipPath id={`${id}-inside`}>
          <path d={glass.inside} />
        </clipPath>
        <Hatch id={`${id}-hatch`} gap={6} />
      </defs>
      <g clipPath={`url(#${id}-inside)`}>
        {layers.length === 0 ? <path className={styles.untested} d={layer(glass.bottom, full)} fill="none" /> : null}
        {drawn.map(({ name, from, to, grade }) => (
          <path
            key={name}
            className={styles.layer}
            d={layer(from, to)}
            fill={grade === "counted" ? "var(--counted)" : `url(#${id}-hatch)`}
          />
        ))}
      </g>
      <path className={styles.glass} d={glass.outline} />
      <path className={styles.glass} d={glass.neck} />
      {drawn.map(({ name, from, to, share, grade }, i) => {
        const at = (from + to) / 2;
        const y = places[i] ?? at;
        return (
          <g key={name} className={styles.label}>
            <path className={styles.leader} d={`M154 ${at}L172 ${y - 5}H178`} />
            <text x="184" y={y}>
              {name}{" "}
              <tspan className={styles.figure}>
                {percent(share)}
                {grade === "counted" ? "" : " assumed"}
              </tspan>
            </text>
          </g>
        );
      })}
    </svg>
  );
}

/** Each layer with where it begins and ends, from the bottom up. */
function stacked(layers: readonly MixedLayer[]) {
  let end: number = glass.bottom;
  return layers.map((layer) => {
    const from = end;
    end -= layer.share * (glass.bottom - full);
    return { ...layer, from, to: end };
  });
}

/** A layer of seed lies a little higher at the glass than in the middle. */
function layer(from: number, to: number): string {
  const sag = 5;
  const middle = (glass.left + glass.right) / 2;
  return `M0 ${from}Q${middle} ${from + sag} 170 ${from}V${to}Q${middle} ${to + sag} 0 ${to}Z`;
}
