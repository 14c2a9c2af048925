import { useId } from "react";
import { Hatch } from "@/components/doubt/hatch";

/** What an empty page may be about. */
export type EmptyNoun = "lots" | "varieties" | "tests" | "season" | "search" | "history" | "sharing";

/*
 * One picture a noun, on a field of 280 by 150: the filled page as it will be, still open. One stroke; what is hatched is
 * the shade of the shelf or the soil.
 */
const row = "M10 128H270";

function Jars() {
  return (
    <>
      <path d={row} />
      <path d="M10 136H270" />
      {[34, 108, 182].map((x, index) => (
        <g key={x} transform={`translate(${x} 0)`}>
          <path d="M14 44h36v9H14zM18 53c0 9-13 10-13 24v45c0 4 2 6 6 6h42c4 0 6-2 6-6V77c0-14-13-15-13-24" />
          <path d="M14 88h36v22H14z" strokeDasharray={index === 0 ? undefined : "3 3"} />
          {index === 0 ? <path d="M20 96h20M20 102h13" /> : null}
        </g>
      ))}
    </>
  );
}

function Seeds() {
  return (
    <>
      {[28, 76, 124].map((y, index) => (
        <path key={y} d={`M104 ${y}h158M104 ${y + 12}h86`} strokeDasharray={index === 0 ? undefined : "3 4"} />
      ))}
      <g transform="translate(30 2) rotate(-20 24 24)">
        <path d="M4.5 25.5C3.8 14.5 12 7 24.5 7S45.2 14.5 44.5 25c-.6 8.5-5.5 14.5-11.5 14-4.6-.4-5-5-9-5s-4.5 4.6-9 5C9.5 39.5 5 34 4.5 25.5Z" />
        <path d="M20 29c0-1.3 1.8-2.1 4-2.1s4 .8 4 2.1-1.8 2.1-4 2.1-4-.8-4-2.1Z" />
      </g>
      <path d="M54 58c9 5 14 12 14 21s-5 17-14 17-14-8-14-17 5-16 14-21Z" strokeDasharray="3 3" />
      <circle cx="54" cy="128" r="15" strokeDasharray="3 3" />
    </>
  );
}

function Cloth({ hatch }: { hatch: string }) {
  const places = [0, 1, 2].flatMap((line) => [0, 1, 2, 3, 4].map((seat) => [72 + seat * 36, 52 + line * 36] as const));
  return (
    <>
      <path d="M34 22c70-4 140 4 212 0 2 38-3 76 0 114-70 4-140-4-212 0-3-38 2-76 0-114Z" />
      <path d="M216 138l30-34v33c-10 .6-20 1-30 1Z" fill={`url(#${hatch})`} />
      {places.map(([x, y], index) => (
        <g key={`${x}:${y}`} transform={`translate(${x} ${y})`}>
          <ellipse rx="8" ry="5.5" transform="rotate(-14)" />
          {index < 4 ? <path d="M-4 4c-4 4-4 8-2 11M3-5c0-6 2-9 6-11M9-16c-5-2-8 0-9 4M9-16c4 0 6 2 7 5" /> : null}
        </g>
      ))}
    </>
  );
}

function Year({ hatch }: { hatch: string }) {
  const months = Array.from({ length: 13 }, (_, index) => 14 + index * 21);
  return (
    <>
      <path d={`M14 108H266`} />
      {months.map((x) => (
        <path key={x} d={`M${x} 103v10`} />
      ))}
      <path d="M66 92c12-16 40-22 62-4" strokeDasharray="3 3" />
      <path d="M120 78c16-20 52-24 78 6" strokeDasharray="3 3" />
      <path d="M190 92c12-14 30-16 44-2" strokeDasharray="3 3" />
      <ellipse cx="140" cy="128" rx="10" ry="7" fill={`url(#${hatch})`} transform="rotate(-10 140 128)" />
      <path d="M140 121V36M140 60c0-12-8-18-21-17 0 12 8 18 21 17ZM140 48c0-13 8-21 22-21 0 13-9 21-22 21Z" />
    </>
  );
}

function Lens() {
  return (
    <>
      {[40, 66, 92, 118].map((y) => (
        <path key={y} d={`M14 ${y}c40-9 80-9 126 0s86 9 126 0`} strokeDasharray={y === 66 ? undefined : "3 5"} />
      ))}
      <circle cx="128" cy="68" r="38" fill="var(--ground)" />
      <path d="M155 95l36 38M161 90l36 38-6 5" />
      <path d="M96 70c21-6 43-6 64 0" />
      <ellipse cx="128" cy="63" rx="11" ry="8" transform="rotate(-14 128 63)" />
    </>
  );
}

function Book({ hatch }: { hatch: string }) {
  return (
    <>
      <path d="M140 34C120 22 76 20 34 28v100c42-8 86-6 106 6 20-12 64-14 106-6V28c-42-8-86-6-106 6Z" />
      <path d="M140 34v100" />
      {[0, 1, 2, 3].map((line) => (
        <g key={line}>
          <path d={`M50 ${52 + line * 18}c26-4 52-3 76 3`} strokeDasharray={line === 0 ? undefined : "3 4"} />
          <path d={`M154 ${55 + line * 18}c24-6 50-7 76-3`} strokeDasharray="3 4" />
        </g>
      ))}
      <path d="M34 128v8c42-8 86-6 106 6 20-12 64-14 106-6v-8" fill={`url(#${hatch})`} fillOpacity="0.5" />
    </>
  );
}

function Packets({ hatch }: { hatch: string }) {
  return (
    <>
      <path d={row} />
      <path d="M34 60h62v68H34zM34 74h62M96 60l-31 14-31-14" />
      <path d="M52 92h26M52 101h17" />
      <path d="M112 94h56M154 80l14 14-14 14" strokeDasharray="3 4" />
      <path d="M184 60h62v68h-62zM184 74h62M246 60l-31 14-31-14" strokeDasharray="3 3" />
      <ellipse cx="215" cy="101" rx="11" ry="8" fill={`url(#${hatch})`} transform="rotate(-14 215 101)" />
      <path d="M120 40c12-9 28-9 40 0" strokeDasharray="3 4" />
    </>
  );
}

/** The picture of an empty page; decoration, its sentence stands below. */
export function EmptyPicture({ noun }: { noun: EmptyNoun }) {
  const hatch = useId();
  return (
    <svg viewBox="0 0 280 150" width="280" height="150" aria-hidden="true" focusable="false">
      <defs>
        <Hatch id={hatch} gap={5} stroke="var(--ink-quiet)" />
      </defs>
      <g fill="none" stroke="currentColor" strokeWidth="1.75">
        {noun === "lots" ? <Jars /> : null}
        {noun === "varieties" ? <Seeds /> : null}
        {noun === "tests" ? <Cloth hatch={hatch} /> : null}
        {noun === "season" ? <Year hatch={hatch} /> : null}
        {noun === "search" ? <Lens /> : null}
        {noun === "sharing" ? <Packets hatch={hatch} /> : null}
        {noun === "history" ? <Book hatch={hatch} /> : null}
      </g>
    </svg>
  );
}
