import styles from "./shares-drawing.module.css";

const step = 10;
const high = 100;

/**
 * What each seed parent gave, the heaviest first: a solid bar each, a line at the share that would be equal, a bracket over the heaviest
 * few. `label` is the text twin; `heaviest` says what stands over the bracket; `equal` what the line means. Null amounts: nobody measured
 * them, open bars at the end.
 */
export function SharesDrawing({
  amounts,
  unmeasured = 0,
  label,
  heaviest,
  equal,
}: {
  amounts: readonly number[];
  unmeasured?: number;
  label: string;
  heaviest: { readonly plants: number; readonly words: string } | null;
  equal: string;
}) {
  const bars = amounts.length + unmeasured;
  const most = amounts[0] ?? 1;
  const mean = amounts.reduce((sum, amount) => sum + amount, 0) / Math.max(1, amounts.length);
  const level = high - (mean / most) * high;
  const bar = (place: number) => ({ x: place * step + step * 0.08, width: step * 0.84 });
  return (
    <figure className={styles.figure}>
      <div className={styles.over}>
        {heaviest ? (
          <span className={styles.bracket} style={{ inlineSize: `${(heaviest.plants / bars) * 100}%` }}>
            <span>{heaviest.words}</span>
          </span>
        ) : null}
      </div>
      <svg
        className={styles.bars}
        viewBox={`0 0 ${bars * step} ${high}`}
        preserveAspectRatio="none"
        role="img"
        aria-label={label}
      >
        {amounts.map((amount, place) => (
          <rect
            // biome-ignore lint/suspicious/noArrayIndexKey: a bar is its rank
            key={place}
            {...bar(place)}
            y={high - Math.max((amount / most) * high, 0.6)}
            height={Math.max((amount / most) * high, 0.6)}
            fill="var(--counted)"
          />
        ))}
        {Array.from({ length: unmeasured }, (_, place) => (
          <rect
            // biome-ignore lint/suspicious/noArrayIndexKey: one bag without a weight is as good as another
            key={`open ${place}`}
            {...bar(amounts.length + place)}
            y={level}
            height={high - level}
            fill="none"
            stroke="var(--unknown)"
            strokeDasharray="2.5 2"
            vectorEffect="non-scaling-stroke"
          />
        ))}
        <path
          d={`M0 ${level}H${bars * step}`}
          stroke="var(--paper)"
          strokeWidth="5"
          vectorEffect="non-scaling-stroke"
          opacity="0.9"
        />
        <path d={`M0 ${level}H${bars * step}`} stroke="var(--ink)" strokeWidth="2" vectorEffect="non-scaling-stroke" />
        <path d={`M0 ${high}H${bars * step}`} stroke="var(--edge)" strokeWidth="2" vectorEffect="non-scaling-stroke" />
      </svg>
      <figcaption className={styles.key}>
        <span>
          <svg width="26" height="12" aria-hidden="true">
            <rect x="1" y="1" width="10" height="10" fill="var(--counted)" />
            <rect x="14" y="5" width="10" height="6" fill="var(--counted)" />
          </svg>
          what each gave, the heaviest first
        </span>
        <span>
          <svg width="26" height="12" aria-hidden="true">
            <path d="M0 6h26" stroke="var(--ink)" strokeWidth="2" />
          </svg>
          {equal}
        </span>
        {unmeasured > 0 ? (
          <span>
            <svg width="14" height="12" aria-hidden="true">
              <rect x="2" y="1" width="10" height="10" fill="none" stroke="var(--unknown)" strokeDasharray="2.5 2" />
            </svg>
            not measured
          </span>
        ) : null}
      </figcaption>
    </figure>
  );
}
