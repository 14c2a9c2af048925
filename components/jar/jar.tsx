import { useId } from "react";
import { Hatch } from "@/components/doubt/hatch";
import { grams, seedsAbout } from "@/lib/display/numbers";
import { glass } from "./glass";
import styles from "./jar.module.css";
import { type JarContents, type JarLevels, jarLevels, partLabels } from "./jar-levels";
import { amountInWords, jarInWords } from "./jar-words";

const { top, bottom, left, right } = glass;
/** So many letters stand beside the glass in one line; of more, the figure takes the next. */
const longestLabel = 21;

/**
 * The jar: what is on hand, what of it is alive, what is kept back, what is free, and until when. Full is alive and tested,
 * hatched is assumed, the dashed heap is not tested; the heap's point is the span. `until` is worded ("about 2029"), null is
 * unknown, left out of an empty jar. The figures stand beside the levels; the text twin says all of it.
 */
export function Jar({ until, ...contents }: JarContents & { until?: string | null }) {
  const id = useId();
  const { seeds, alive } = contents;
  const levels = jarLevels(contents, top, bottom);
  const aliveKnown = levels.aliveLow !== null && levels.aliveHigh !== null;
  const untested = alive === null && levels.onHand !== null && levels.onHand < bottom;
  const heapTop = levels.aliveHigh ?? (untested ? levels.onHand : null);
  const fill = alive?.grade === "assumed" ? `url(#${id}-hatch)` : "var(--counted)";
  const tag = until === null ? "keeping not known" : `good until ${until}`;
  const labels = jarLabels(contents, levels);
  const places = partLabels(
    labels.map((label) => label.at),
    42,
    bottom - 4,
  );
  return (
    <svg className={styles.jar} viewBox="0 0 340 262" role="img" aria-label={jarInWords(contents, until)}>
      <defs>
        <clipPath id={`${id}-inside`}>
          <path d={glass.inside} />
        </clipPath>
        {alive?.grade === "assumed" ? <Hatch id={`${id}-hatch`} gap={6} /> : null}
      </defs>
      <g clipPath={`url(#${id}-inside)`}>
        {levels.onHand === null ? null : (
          <path className={styles.onHand} d={`M0 ${levels.onHand}H170V260H0Z`} data-grade={seeds?.grade ?? "counted"} />
        )}
        {heapTop === null ? null : (
          <path
            className={aliveKnown ? styles.alive : styles.untested}
            d={heap(levels.aliveLow ?? bottom, heapTop)}
            fill={aliveKnown ? fill : "none"}
          />
        )}
        {levels.reserved === null ? null : (
          <g className={styles.cut} data-short={levels.short || undefined}>
            <path d={`M0 ${levels.reserved}H170`} />
            <path d={`M0 ${levels.reserved}H170`} />
          </g>
        )}
      </g>
      <path className={styles.glass} d={glass.outline} />
      <path className={styles.glass} d={glass.neck} />
      {labels.map((label, index) => {
        const y = places[index] ?? label.at;
        const waits = label.name === "kept back" && levels.short;
        return (
          <g key={label.name} data-waits={waits || undefined} className={styles.label}>
            {label.drawn ? <path className={styles.leader} d={`M154 ${label.at}L172 ${y - 4}H178`} /> : null}
            <text x="184" y={y}>
              {label.name}{" "}
              <tspan
                className={label.words === "unknown" ? styles.unknown : styles.figure}
                {...(label.name.length + label.words.length > longestLabel ? { x: 184, dy: 17 } : {})}
              >
                {label.words}
              </tspan>
              {label.under ? (
                <tspan className={styles.under} x="184" dy="17">
                  {label.under}
                </tspan>
              ) : null}
            </text>
          </g>
        );
      })}
      {until === undefined ? null : (
        <g className={styles.tag}>
          <path d="M126 26C140 22 150 20 162 21" />
          <path d={`M162 21l10-11h${18 + tag.length * 7.1}v22H172Z`} />
          <circle cx="170" cy="21" r="2" />
          <text x="179" y="26">
            {tag}
          </text>
        </g>
      )}
    </svg>
  );
}

/** The four figures beside the glass, each at its level, or in their order where a level is not known. */
function jarLabels({ grams: weight, seeds, alive, reserved, free }: JarContents, levels: JarLevels) {
  const freeAt =
    levels.alive === null || levels.reserved === null ? null : (levels.alive + Math.min(levels.reserved, bottom)) / 2;
  return [
    {
      name: "on hand",
      at: levels.onHand ?? top + 52,
      drawn: levels.onHand !== null,
      words: weight === null ? amountInWords(seeds) : grams(weight),
      under: weight === null || seeds === null || weight === 0 ? null : amountInWords(seeds),
    },
    {
      name: "alive",
      at: levels.alive ?? top + 100,
      drawn: levels.alive !== null,
      words: amountInWords(alive),
      under: null,
    },
    { name: "free", at: freeAt ?? top + 136, drawn: freeAt !== null, words: amountInWords(free), under: null },
    {
      name: "kept back",
      at: levels.reserved ?? bottom - 6,
      drawn: levels.reserved !== null,
      words: reserved === null ? "unknown" : seedsAbout(reserved),
      under: null,
    },
  ];
}

/** Full width up to `low`, then drawn up to a point at `high`: the soft end of a span, as seed heaps in a jar. */
function heap(low: number, high: number): string {
  const middle = (left + right) / 2;
  const rise = low - high;
  return `M0 260V${low}H${left}C${left + 30} ${low} ${middle - 26} ${low - rise * 0.25} ${middle} ${high}C${middle + 26} ${low - rise * 0.25} ${right - 30} ${low} ${right} ${low}H170V260Z`;
}
