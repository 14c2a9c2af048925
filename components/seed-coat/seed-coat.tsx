import { useId } from "react";
import { type Coat, type CoatColour, type SeedShape, tone } from "./coat";
import { coatFromName } from "./coat-from-name";
import { numberOf } from "./number-stream";
import { outlines } from "./outlines";
import { scatter } from "./scatter";
import { shapeOfCrop } from "./shape-of-crop";

/**
 * A variety's own mark: its seed, drawn. `name` fixes where each speck lies, and the whole coat where none was chosen (`coat`);
 * `crop` (its key) gives the outline unless `shape` is said. `size` 16 to 96 px. `ink="black"` is for labels: white, dotted
 * or full, no grey. The mark stands beside the name and is decoration, unless a `label` is given.
 */
export function SeedCoat({
  name,
  coat,
  crop = "",
  shape = shapeOfCrop(crop),
  size = 24,
  ink = "colour",
  label,
}: {
  name: string;
  coat?: Coat | null;
  crop?: string;
  shape?: SeedShape;
  size?: number;
  ink?: "colour" | "black";
  label?: string;
}) {
  const id = useId();
  const { pattern, ground, second } = coat ?? coatFromName(name);
  const { edge, cut, scar, lie, turn } = outlines[shape];
  const coarse = size < 30;
  const fill = (colour: CoatColour) => (ink === "colour" ? `var(--seed-${colour})` : inked(tone(colour), id));
  const line = ink === "colour" ? "var(--seed-line)" : "black";
  const along = pattern === "stripe" || pattern === "marbled" || pattern === "two tones";
  const dark = tone(pattern === "eye" || pattern === "ring" ? second : ground) === "black";
  const drawing = (
    <g transform={`rotate(${turn} 24 24)`}>
      <defs>
        <clipPath id={`${id}-edge`}>
          <path d={edge} />
        </clipPath>
        {ink === "black" ? <Stipple id={`${id}-stipple`} /> : null}
      </defs>
      <path d={edge} fill={ink === "black" ? "white" : fill(ground)} />
      {ink === "black" ? <path d={edge} fill={fill(ground)} /> : null}
      <g clipPath={`url(#${id}-edge)`}>
        <g transform={along ? `rotate(${lie} 24 24)` : undefined}>
          {scatter(pattern, numberOf(name), coarse, scar).map((piece) =>
            piece.width === undefined ? (
              <path key={piece.path} d={piece.path} fill={fill(second)} />
            ) : (
              <path key={piece.path} d={piece.path} fill="none" stroke={fill(second)} strokeWidth={piece.width} />
            ),
          )}
        </g>
        {pattern === "ring" ? <path d={edge} fill="none" stroke={fill(second)} strokeWidth={coarse ? 17 : 14} /> : null}
      </g>
      {size >= 20 ? (
        <path
          d={cut}
          fill="none"
          stroke={dark ? "var(--seed-white)" : "var(--seed-black)"}
          strokeOpacity={ink === "black" ? 1 : 0.75}
          strokeWidth={coarse ? 2.4 : 1.5}
        />
      ) : null}
      <path d={edge} fill="none" stroke={line} strokeWidth={1.2} vectorEffect="non-scaling-stroke" />
    </g>
  );
  const style = { flex: "none" };
  if (label) {
    return (
      <svg width={size} height={size} viewBox="0 0 48 48" style={style} role="img" aria-label={label}>
        {drawing}
      </svg>
    );
  }
  return (
    <svg width={size} height={size} viewBox="0 0 48 48" style={style} aria-hidden="true" focusable="false">
      {drawing}
    </svg>
  );
}

function inked(darkness: "white" | "stippled" | "black", id: string): string {
  return darkness === "stippled" ? `url(#${id}-stipple)` : darkness;
}

/** Half-dark in black ink: dots, for hatching already means assumed. */
function Stipple({ id }: { id: string }) {
  return (
    <pattern id={id} width="4" height="4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <rect width="4" height="4" fill="white" />
      <circle cx="2" cy="2" r="1.2" fill="black" />
    </pattern>
  );
}
