"use client";

import { SpanBar } from "@/components/doubt";
import { type SizeGround, type SizeSoFar, sizeSoFar } from "@/lib/registry/grow-outs/size-so-far";
import { sizeWords } from "../_words/size-so-far-words";
import styles from "./live-size.module.css";

/** What the grow-out counts as with what is typed: the figure, its span with the crop's floor marked, and what would narrow it. */
export function LiveSize({ ground, title = "What it counts as" }: { ground: SizeGround; title?: string }) {
  const size = sizeSoFar(ground);
  const words = sizeWords(size, ground);
  return (
    <div className={styles.size} role="status" aria-live="polite" aria-label={title}>
      <p className={styles.title}>{title}</p>
      <p className={styles.figure} data-waiting={words.narrow || undefined}>
        {words.figure}
      </p>
      <SizeBar size={size} floor={ground.floor} label={`${words.figure} ${words.sentence}`} />
      <p>{words.sentence}</p>
      {words.floor ? <p data-waiting={words.narrow || undefined}>{words.floor}</p> : null}
      {words.narrows ? <p className={styles.narrows}>{words.narrows}</p> : null}
    </div>
  );
}

/** The size on a line from nothing to a little over the most that it can be, or over the floor; the floor drawn across. */
export function SizeBar({
  size,
  floor,
  label,
  width = 260,
}: {
  size: SizeSoFar;
  floor: number | null;
  label: string;
  width?: number;
}) {
  const ends = endsOf(size);
  if (ends === null) return null;
  const most = Math.max(ends.high ?? ends.low * 4, floor ?? 0) * 1.15;
  return (
    <div className={styles.bar}>
      <SpanBar
        value={ends.value}
        low={ends.low}
        high={ends.high ?? most}
        grade={size.state === "before-seed" ? "assumed" : "counted"}
        scale={[0, most]}
        line={floor ?? undefined}
        label={label}
        width={width}
        height={26}
      />
      {floor === null ? null : (
        <p className={styles.floor} style={{ insetInlineStart: `${(floor / most) * 100}%` }} aria-hidden="true">
          floor {floor}
        </p>
      )}
    </div>
  );
}

function endsOf(size: SizeSoFar): { low: number; high: number | null; value: number | null } | null {
  if (size.state === "known") return { low: size.size, high: size.size, value: size.size };
  if (size.state === "span") return { low: size.low, high: size.high, value: null };
  if (size.state === "before-seed") return { low: size.low, high: size.high, value: size.meant?.size ?? size.high };
  return null;
}
