import type { ReactNode } from "react";
import { useId } from "react";
import { Hatch } from "@/components/doubt/hatch";
import { spindle } from "@/components/doubt/spindle";
import { percent } from "@/lib/display/numbers";
import { toneScale, toneSteps } from "./layout/tones";
import { widthOfSize } from "./layout/width-of-size";
import signs from "./picture.module.css";
import type { StemTree } from "./stem";
import styles from "./stem-legend.module.css";
import { toneColour } from "./tone-colours";

const full = 21;

/** Each sign of the picture with its meaning in words; signs that seldom stand in one are told where they do. */
export function StemLegend({ tree, seed }: { tree: StemTree; seed: ReactNode }) {
  const id = useId();
  const tones = toneScale(tree.lots);
  const has = {
    growing: tree.lots.some(({ kind }) => kind === "growing"),
    cross: tree.lots.some(({ parents }) => parents.some(({ role }) => role)),
    elsewhere: tree.lots.some(({ variety }) => variety !== null),
  };
  return (
    <div className={styles.legend}>
      <h3>How to read it</h3>
      <ul>
        <Sign
          drawing={[10, 50, 200].map((size, place) => (
            <g key={size}>
              <path className={styles.sample} d={`M${place * 34} 15h26`} strokeWidth={widthOfSize(size, full)} />
              <text x={place * 34 + 13} y="39">
                {size}
              </text>
            </g>
          ))}
          width={96}
          height={42}
        >
          A stem is a line of seed, from left to right through the years. It is as wide as the <b>effective size</b> of
          the grow-out that it came through: the number of plants that, all giving alike, would lose as little by
          chance. Half as wide is twice the chance loss. The thinnest place is the narrowest point; a small figure at it
          gives the size where it was counted.
        </Sign>
        <Sign
          drawing={
            <>
              <defs>
                <linearGradient id={`${id}-tone`}>
                  <stop offset="0" stopColor={toneColour(0)} />
                  <stop offset="1" stopColor={toneColour(10)} />
                </linearGradient>
              </defs>
              <rect x="0" y="6" width="96" height="14" fill={`url(#${id}-tone)`} className={signs.sampleBox} />
              <text x="0" y="38" textAnchor="start">
                {percent(tones?.low ?? null, 0)}
              </text>
              <text x="96" y="38" textAnchor="end">
                {percent(tones?.high ?? null, 0)}
              </text>
            </>
          }
          width={96}
          height={42}
        >
          It is as deep in tone as the <b>diversity</b> it still has of what its founders brought; the tone spans this
          variety’s own least and most; an outline without tone has no figure. Behind the name of a lot with seed stands
          the figure, or the span of what the records allow.
        </Sign>
        <Sign drawing={<g transform="translate(0 2)">{seed}</g>} width={20} height={22}>
          A lot with seed in the jar.
        </Sign>
        <Sign drawing={<circle className={signs.ring} cx="10" cy="11" r="4" />} width={20} height={22}>
          A lot of which none is left; broken where nobody knows.
        </Sign>
        <Sign
          drawing={
            <>
              <path className={signs.stalk} strokeWidth={2.6} d="M2 2C6 14 16 14 46 14" />
              <path d="M2 18C6 28 14 28 26 27L46 22V36L26 29.6C14 30.6 4 30 0.5 18Z" fill={toneColour(toneSteps - 2)} />
            </>
          }
          width={48}
          height={40}
        >
          A thin stalk is seed parted by hand into another jar: nothing is lost by that, and it passes other bands
          without touching them. In tone, and swelling, where the new jar was grown on. Bands that flow into one are a
          blend, or lots sown together.
        </Sign>
        <Sign
          drawing={
            <>
              <path className={styles.sample} d="M0 20h46" strokeWidth="9" />
              <path className={signs.thorn} d="M18 16Q20 9 20 3Q25 10 27 16Z" />
            </>
          }
          width={48}
          height={26}
        >
          A thorn: <b>foreign pollen</b> came in at this grow-out, with the share of the pollen beside it. An open
          thorn: a cross is suspected, and nobody knows how much.
        </Sign>
        <Sign drawing={<path className={signs.told} d="M3 11H46" />} width={48} height={22}>
          Dots are <b>only told</b>: no record shows it. Before a lot they say that nothing is known of where it came
          from.
        </Sign>
        <Sign
          drawing={
            <>
              <defs>
                <Hatch id={`${id}-hatch`} gap={4} stroke="var(--unknown)" />
              </defs>
              <path className={signs.fuzzy} d={spindle(2, 46, 24, 11, 15)} fill={`url(#${id}-hatch)`} />
            </>
          }
          width={48}
          height={22}
        >
          Drawn out where the year is known to no better than this.
        </Sign>
        <Sign
          drawing={
            <>
              <path className={signs.open} d="M0 4H22V18H0Z" />
              <path className={signs.sleeve} d="M26 3H48V19H26Z" fill={`url(#${id}-hatch)`} />
              <path className={styles.sample} d="M26 11H48" strokeWidth="6" />
            </>
          }
          width={48}
          height={22}
        >
          Open: the plants were not counted. A hatched sleeve: at most as wide as that.
        </Sign>
        <Sign
          drawing={
            <>
              <path className={signs.stalk} strokeWidth={2.6} d="M4 11H30" />
              <path className={signs.stub} d="M30 4V18" />
            </>
          }
          width={48}
          height={22}
        >
          A stub: sown, and it gave no seed.
        </Sign>
        {has.growing ? (
          <Sign
            drawing={
              <>
                <path className={signs.open} d="M0 5H36V17H0Z" />
                <path className={signs.tip} d="M38 4L46 11L38 18" />
              </>
            }
            width={48}
            height={22}
          >
            An open tip: it stands in the field and has given no seed yet.
          </Sign>
        ) : null}
        {has.cross ? (
          <Sign
            drawing={
              <>
                <path className={styles.sample} d="M0 6H46" strokeWidth="7" />
                <path className={styles.sample} d="M0 15H46" strokeWidth="7" />
                <path className={signs.pollen} d="M2 15H46" />
              </>
            }
            width={48}
            height={22}
          >
            A cross made on purpose: the beaded line brought the pollen, the plain one the seed; half of the genes each.
          </Sign>
        ) : null}
        {has.elsewhere ? (
          <Sign drawing={<path className={signs.elsewhere} d="M10 4L17 11L10 18L3 11Z" />} width={20} height={22}>
            A lot of another variety, crossed in.
          </Sign>
        ) : null}
        <Sign
          drawing={
            <>
              <path className={styles.sample} d="M0 11H46" strokeWidth="7" />
              <circle className={styles.beadSample} cx="23" cy="11" r="9" />
              <text x="23" y="15.5">
                6
              </text>
            </>
          }
          width={48}
          height={22}
        >
          So many harvests one after the other, folded for want of room.
        </Sign>
      </ul>
    </div>
  );
}

function Sign({
  drawing,
  width,
  height,
  children,
}: {
  drawing: ReactNode;
  width: number;
  height: number;
  children: ReactNode;
}) {
  return (
    <li>
      <svg width={width} height={height} viewBox={`0 0 ${width} ${height}`} aria-hidden="true" focusable="false">
        {drawing}
      </svg>
      <span>{children}</span>
    </li>
  );
}
