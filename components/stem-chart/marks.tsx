import { memo } from "react";
import { spindle } from "@/components/doubt/spindle";
import type { PlacedLot } from "./layout/position";
import styles from "./picture.module.css";

/** A lot in the picture: the variety's own seed where there is some in the jar, a ring where there is none, a bar across a stub, an open tip in the field. */
export const LotMark = memo(function LotMark({
  lot,
  coat,
  hatch,
  faint,
  pressed,
  compared,
  active,
  spoken,
}: {
  lot: PlacedLot;
  /** the id of the drawn seed */
  coat: string;
  hatch: string;
  faint: boolean;
  pressed: boolean;
  compared: boolean;
  /** the one of all marks that the tab key reaches */
  active: boolean;
  spoken: string;
}) {
  const { grown, x, y, left, right } = lot;
  const { id, kind, living, variety } = grown.lot;
  return (
    // biome-ignore lint/a11y/useSemanticElements: SVG has no button element
    <g
      role="button"
      tabIndex={active ? 0 : -1}
      aria-label={spoken}
      aria-pressed={pressed}
      data-lot={id}
      className={styles.lot}
      data-faint={faint || undefined}
      data-compared={compared || undefined}
    >
      {right - left > 6 ? (
        <path className={styles.fuzzy} d={spindle(left, right, x, y, 15)} fill={`url(#${hatch})`} />
      ) : null}
      {grown.links.length === 0 && (variety === null || kind === "founder") ? <Root lot={lot} /> : null}
      {kind === "failed" ? (
        <path className={styles.stub} d={`M${x} ${y - 7}V${y + 7}`} />
      ) : kind === "growing" ? (
        <path className={styles.tip} d={`M${x - 5} ${y - 7}L${x + 4} ${y}L${x - 5} ${y + 7}`} />
      ) : variety !== null ? (
        <path className={styles.elsewhere} d={`M${x} ${y - 7}L${x + 7} ${y}L${x} ${y + 7}L${x - 7} ${y}Z`} />
      ) : living ? (
        <use href={`#${coat}`} x={x - 9} y={y - 9} />
      ) : (
        <circle className={styles.ring} cx={x} cy={y} r="4" data-unsure={living === null || undefined} />
      )}
      <circle className={styles.halo} cx={x} cy={y} r="13" />
    </g>
  );
});

/** Where nothing is on record before: dots, or a gap cut into the stem where a parent is named that is not here. */
function Root({ lot: { grown, x, y, left } }: { lot: PlacedLot }) {
  const from = Math.min(x - 10, left - 3);
  return grown.gap ? (
    <path className={styles.gap} d={`M${from - 20} ${y - 6}l5 6l-5 6M${from - 10} ${y - 6}l5 6l-5 6`} />
  ) : (
    <path className={styles.told} d={`M${from} ${y}H${from - 22}`} />
  );
}
