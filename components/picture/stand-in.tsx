import styles from "./picture.module.css";

/** An open frame with one corner torn off, and what there is to know. */
export function StandIn({
  alt,
  width,
  height,
  className,
}: {
  alt: string;
  width: number;
  height: number;
  className: string | undefined;
}) {
  return (
    <span className={`${styles.standIn} ${className}`} style={{ aspectRatio: `${width} / ${height}` }}>
      <svg viewBox="0 0 48 36" aria-hidden="true" focusable="false">
        <path d="M4 4h28l4 6 3-2 5 6v18H4z" strokeDasharray="3 3" />
        <path d="M10 28c3-7 6-10 9-10s5 4 8 4 5-3 8-3" />
      </svg>
      <span>The file of this picture is gone or damaged: {alt}. A backup may have it.</span>
    </span>
  );
}
