"use client";

import {
  type CSSProperties,
  type KeyboardEvent,
  type MouseEvent,
  memo,
  type PointerEvent,
  type ReactNode,
  type RefObject,
} from "react";
import { counted } from "@/lib/display/plurals";
import type { StemAddress } from "./address";
import type { LotCards } from "./cards";
import type { PlacedFold, PlacedLot, StemPicture } from "./layout/position";
import { LotMark } from "./marks";
import { Labels, PictureGround, Stems } from "./picture";
import styles from "./stem-chart.module.css";

/** All lots that are not folded. */
const Marks = memo(function Marks({
  picture,
  ids,
  traced,
  lot: pressed,
  beside,
  active,
  cards,
}: {
  picture: StemPicture;
  ids: { readonly hatch: string; readonly seed: string };
  traced: ReadonlySet<string> | null;
  /** the lot that is asked for, and the one that is set beside it */
  lot: string | null;
  beside: string | null;
  active: string | null;
  cards: LotCards;
}) {
  return (
    <g>
      {picture.lots.map((lot) => {
        const { id } = lot.grown.lot;
        return lot.fold === null ? (
          <LotMark
            key={id}
            lot={lot}
            coat={ids.seed}
            hatch={ids.hatch}
            faint={traced !== null && !traced.has(id) && id !== beside}
            pressed={id === pressed}
            compared={id === beside}
            active={id === active}
            spoken={cards[id]?.spoken ?? lot.grown.lot.number}
          />
        ) : null;
      })}
    </g>
  );
});

/** The frame in which the picture is moved sideways, with the names of the bands at its left edge and the card of what is pointed at. */
export function PictureFrame({
  frame,
  picture,
  ids,
  seed,
  title,
  traced,
  asked,
  active,
  cards,
  tip,
  onKey,
  onPoint,
  onLeave,
  onChoose,
  onUnfold,
}: {
  frame: RefObject<HTMLDivElement | null>;
  picture: StemPicture;
  ids: { readonly hatch: string; readonly tone: string; readonly seed: string };
  seed: ReactNode;
  title: string;
  traced: ReadonlySet<string> | null;
  asked: StemAddress;
  active: string | null;
  cards: LotCards;
  tip: PlacedLot | undefined;
  onKey: (event: KeyboardEvent) => void;
  onPoint: (x: number, y: number, reach: number) => void;
  onLeave: () => void;
  onChoose: (x: number, y: number, named: string | null) => void;
  onUnfold: (fold: PlacedFold) => void;
}) {
  const at = (event: MouseEvent<SVGSVGElement>) => {
    const box = event.currentTarget.getBoundingClientRect();
    const scale = picture.width / box.width;
    return [(event.clientX - box.left) * scale, (event.clientY - box.top) * scale] as const;
  };
  const tipCard = tip && cards[tip.grown.lot.id];
  return (
    <div className={styles.frame} ref={frame}>
      <div
        className={styles.sheet}
        style={{ "--across": `${picture.width}px`, "--down": `${picture.height}px` } as CSSProperties}
      >
        {/* biome-ignore lint/a11y/useSemanticElements: a picture whose marks are buttons */}
        <svg
          role="group"
          aria-label={title}
          className={styles.picture}
          viewBox={`0 0 ${picture.width} ${picture.height}`}
          width={picture.width}
          height={picture.height}
          onKeyDown={onKey}
          onPointerMove={(event: PointerEvent<SVGSVGElement>) => {
            if (event.pointerType === "mouse") onPoint(...at(event), 22);
          }}
          onPointerLeave={onLeave}
          onClick={(event) => {
            const mark = event.target instanceof Element ? event.target.closest("[data-lot]") : null;
            onChoose(...at(event), mark?.getAttribute("data-lot") ?? null);
          }}
        >
          <defs>
            <g id={ids.seed}>{seed}</g>
          </defs>
          <PictureGround picture={picture} ids={ids} />
          <Stems picture={picture} ids={ids} traced={traced} />
          <Marks
            picture={picture}
            ids={ids}
            traced={traced}
            lot={asked.lot}
            beside={asked.with}
            active={active}
            cards={cards}
          />
          <Labels picture={picture} traced={traced} />
        </svg>
        {picture.folds.map((fold) => (
          <button
            key={fold.id}
            type="button"
            className={styles.bead}
            style={{ insetInlineStart: fold.x, insetBlockStart: fold.y }}
            onClick={() => onUnfold(fold)}
          >
            {fold.lots.length}
            <span className="heard"> harvests folded here, one after the other: open them</span>
          </button>
        ))}
        <div className={styles.names}>
          <div className={styles.stuck}>
            {picture.bands.map(({ band, top }) => (
              <p key={band.key} style={{ insetBlockStart: top }}>
                {band.name}
                {band.place ? <span> {band.place}</span> : null}
              </p>
            ))}
          </div>
        </div>
        {tip && tipCard ? (
          <div
            className={styles.tip}
            data-left={tip.x > picture.width - 260 || undefined}
            style={{ insetInlineStart: tip.x, insetBlockStart: tip.y }}
            aria-hidden="true"
          >
            <b>{tipCard.number}</b> {tipCard.kind}
            <br />
            {tipCard.holder}
            {tipCard.facts.slice(0, 3).map(({ name, value }) => (
              <span key={name}>
                {name}: {value}
              </span>
            ))}
          </div>
        ) : null}
      </div>
      <p className="heard">
        {counted(picture.lots.length, "lot")} from left to right by year, in {counted(picture.bands.length, "band")}.
        The arrow keys lead from lot to lot, left to a parent and right to what came of it, Page Down and Page Up
        through all by year; Enter opens one. The same stands in the table below.
      </p>
    </div>
  );
}
