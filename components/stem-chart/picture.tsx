import { memo } from "react";
import { Hatch } from "@/components/doubt/hatch";
import { axisHeight, type StemPicture } from "./layout/position";
import type { PlacedStem } from "./layout/stems";
import { stalk } from "./layout/stems";
import styles from "./picture.module.css";
import { toneName, toneStops } from "./tone-colours";

/** Ids of what the picture's paths refer to. */
export interface PictureIds {
  readonly hatch: string;
  readonly tone: string;
}

/** Bands, years and stems: what stands still while a lot is looked at. */
export const PictureGround = memo(function PictureGround({ picture, ids }: { picture: StemPicture; ids: PictureIds }) {
  const foot = picture.height - 2;
  return (
    <g>
      <defs>
        <Hatch id={ids.hatch} gap={4} stroke="var(--unknown)" />
        {toneStops(picture.stems).map(({ name, from, to }) => (
          <linearGradient key={name} id={`${ids.tone}-${name}`}>
            <stop offset="0.1" stopColor={from} />
            <stop offset="1" stopColor={to} />
          </linearGradient>
        ))}
      </defs>
      {picture.bands.map(({ band, top, bottom }, place) => (
        <rect
          key={band.key}
          className={styles.band}
          data-even={place % 2 === 0 || undefined}
          x="0"
          y={top}
          width={picture.width}
          height={bottom - top}
        />
      ))}
      {picture.bands.slice(1).map(({ band, top }) => (
        <path key={band.key} className={styles.edge} d={`M0 ${top}H${picture.width}`} />
      ))}
      {picture.bands.map(({ band, top }) => (
        <text key={band.key} className={styles.bandName} x="4" y={top + 16}>
          {band.name}
          {band.place ? `, ${band.place}` : ""}
        </text>
      ))}
      {picture.ticks.map(({ year, x }) => (
        <g key={year} className={styles.year}>
          <path d={`M${x} ${axisHeight - 5}V${foot}`} />
          <text x={x} y={axisHeight - 9}>
            {year}
          </text>
        </g>
      ))}
    </g>
  );
});

/** A stem that is followed has a vein where it is wide enough for one; a thin one stands out by being alone. */
const veined = 7;

/** The stems, those across bands below those that stay in one. */
export const Stems = memo(function Stems({
  picture,
  ids,
  traced,
}: {
  picture: StemPicture;
  ids: PictureIds;
  traced: ReadonlySet<string> | null;
}) {
  const inTrace = ({ parent, child }: PlacedStem) => traced === null || (traced.has(parent) && traced.has(child));
  return (
    <g>
      {picture.stems.map((stem) => (
        <Stem key={`${stem.parent} ${stem.child}`} stem={stem} ids={ids} faint={!inTrace(stem)} />
      ))}
      {picture.told.map(({ claim, path }) => (
        <path
          key={claim.id}
          className={styles.told}
          d={path}
          data-aside={claim.standing === "set aside" || undefined}
          data-faint={(traced !== null && !traced.has(claim.lotId)) || undefined}
        />
      ))}
      {picture.thorns.map(({ lot, path, open }) => (
        <path
          key={lot}
          className={styles.thorn}
          d={path}
          data-open={open || undefined}
          data-faint={(traced !== null && !traced.has(lot)) || undefined}
        />
      ))}
      {traced === null
        ? null
        : picture.stems
            .filter(inTrace)
            .filter(({ way, widest }) => way === "stalk" || widest >= veined)
            .map(({ parent, child, way, middle }) => (
              <path key={`${parent} ${child}`} className={styles.way} data-way={way} d={middle} pathLength={1} />
            ))}
    </g>
  );
});

const Stem = memo(function Stem({ stem, ids, faint }: { stem: PlacedStem; ids: PictureIds; faint: boolean }) {
  const fill = `url(#${ids.tone}-${toneName(stem.tones)})`;
  return (
    <g className={styles.stem} data-faint={faint || undefined}>
      {stem.way === "stalk" ? (
        <>
          <path className={styles.casing} d={stem.middle} strokeWidth={stalk + 4} />
          <path className={styles.stalk} d={stem.middle} strokeWidth={stalk} />
        </>
      ) : null}
      {stem.pieces.map(({ kind, path }) => (
        <path
          key={kind}
          className={styles[kind]}
          d={path}
          data-toneless={(kind === "core" && stem.tones.includes(null)) || undefined}
          fill={kind === "sleeve" ? `url(#${ids.hatch})` : kind === "core" ? fill : undefined}
        />
      ))}
      {stem.pollen ? <path className={styles.pollen} d={stem.middle} /> : null}
    </g>
  );
});

const labelClass = { lot: styles.name, waist: styles.waist, thorn: styles.rate } as const;

/** Names, figures at waists and rates at thorns; and the beads of folded harvests. */
export const Labels = memo(function Labels({
  picture,
  traced,
}: {
  picture: StemPicture;
  traced: ReadonlySet<string> | null;
}) {
  return (
    // biome-ignore lint/a11y/noAriaHiddenOnFocusable: nothing in it takes the focus; each mark says its own name
    <g aria-hidden="true">
      {picture.labels.map(({ id, kind, name, figure, x, y, anchor }) => (
        <text
          key={`${kind} ${id}`}
          className={labelClass[kind]}
          x={x}
          y={y}
          textAnchor={anchor}
          data-faint={(traced !== null && !traced.has(id)) || undefined}
        >
          {name}
          {figure === null ? null : (
            <tspan className={styles.figure} dx={name === "" ? 0 : 5}>
              {figure}
            </tspan>
          )}
        </text>
      ))}
    </g>
  );
});
