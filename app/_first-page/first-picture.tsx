import { useId } from "react";
import { Hatch } from "@/components/doubt/hatch";
import styles from "./first-page.module.css";

/** A jar's outline with its foot at (x, y); `left` is how much of it is filled, 0 to 1. */
function Jar({ x, y, left, hatch, open }: { x: number; y: number; left: number; hatch: string; open?: boolean }) {
  const top = 100 - 74 * left;
  return (
    <g transform={`translate(${x} ${y - 108})`}>
      <path
        d={`M12 ${top}H68V98c0 4-3 6-6 6H18c-3 0-6-2-6-6Z`}
        fill={open ? `url(#${hatch})` : "var(--counted)"}
        stroke="none"
      />
      <path
        d="M20 4h40v10H20zM25 14c0 9-15 11-15 26v58c0 5 3 8 8 8h44c5 0 8-3 8-8V40c0-15-15-17-15-26"
        fill="none"
        stroke="var(--ink)"
        strokeWidth="1.75"
      />
    </g>
  );
}

/**
 * What the registry makes of a notebook, drawn: three lines of a page become a lineage, the lineage ends in jars, and each jar says what
 * it holds. Solid is counted, hatched assumed, open unknown, as everywhere.
 */
export function FirstPicture() {
  const hatch = useId();
  const lines = ["1978, from the mill, one jar", "1994, 40 plants, kept from 12", "2019, badly; 2023 a good year"];
  return (
    <figure className={styles.picture}>
      <svg viewBox="0 0 560 470" role="img" aria-labelledby={`${hatch}-says`}>
        <title id={`${hatch}-says`}>
          A page of a notebook, from which a lineage grows to three jars on a shelf: each says what is left, how it
          comes up and how much of the variety it holds.
        </title>
        <defs>
          <Hatch id={hatch} gap={5} />
        </defs>
        <g fill="none" stroke="var(--ink)" strokeWidth="1.75">
          <path d="M40 152H540M40 160H540" />
          <path d="M82 452 60 340c96-18 190-14 268 4l20 112c-84-16-176-18-266-4Z" fill="var(--ground-raised)" />
          <path d="M348 456c50-18 104-22 152-12l-14-110c-52-10-106-6-158 10" fill="var(--ground-raised)" />
        </g>
        <g>
          {lines.map((line, index) => (
            <text key={line} x={82 + index * 5} y={376 + index * 27} transform={`rotate(-1.5 82 ${376 + index * 27})`}>
              {line}
            </text>
          ))}
        </g>
        <g fill="none" stroke="var(--counted)">
          <path d="M356 352C350 318 292 318 290 268" strokeWidth="11" />
          <path d="M290 270C288 226 122 244 120 196" strokeWidth="7" />
          <path d="M290 270C290 232 292 226 292 196" strokeWidth="9" />
          <path d="M290 270C294 226 458 246 462 196" strokeWidth="4" strokeDasharray="7 5" />
        </g>
        <g fill="var(--ground)" stroke="var(--ink)" strokeWidth="1.75">
          <ellipse cx="356" cy="356" rx="13" ry="9" transform="rotate(-14 356 356)" fill="var(--seed-buff)" />
          <ellipse cx="290" cy="270" rx="12" ry="8.5" transform="rotate(-10 290 270)" fill="var(--seed-buff)" />
          {[120, 292].map((x) => (
            <ellipse
              key={x}
              cx={x}
              cy="192"
              rx="10"
              ry="7"
              transform={`rotate(-12 ${x} 192)`}
              fill="var(--seed-buff)"
            />
          ))}
          <ellipse cx="462" cy="192" rx="10" ry="7" transform="rotate(-12 462 192)" strokeDasharray="3 2.5" />
        </g>
        <Jar x={80} y={150} left={0.34} hatch={hatch} />
        <Jar x={252} y={150} left={0.82} hatch={hatch} />
        <Jar x={422} y={150} left={0.5} hatch={hatch} open />
        <g>
          <text x="120" y="22" textAnchor="middle" className={styles.count}>
            42 g, 64–88 %
          </text>
          <text x="292" y="22" textAnchor="middle" className={styles.count}>
            180 g, 91–99 %
          </text>
          <text x="462" y="22" textAnchor="middle" className={`${styles.count} ${styles.quiet}`}>
            about 60 g, never tested
          </text>
          <text x="106" y="214" textAnchor="end" className={styles.quiet}>
            the old line
          </text>
          <text x="318" y="262">
            97 % kept
          </text>
          <text x="384" y="396" className={styles.quiet}>
            one founder
          </text>
        </g>
      </svg>
    </figure>
  );
}
