import styles from "./scan-code.module.css";

/** A code to scan, black on white in every ground, with the quiet zone of four modules that scanners want (ISO/IEC 18004). */
export function ScanCode({ size, path, label }: { size: number; path: string; label: string }) {
  const side = size + 8;
  return (
    <svg className={styles.code} viewBox={`-4 -4 ${side} ${side}`} role="img" aria-label={label}>
      <rect x="-4" y="-4" width={side} height={side} className={styles.ground} />
      <path d={path} className={styles.dark} shapeRendering="crispEdges" />
    </svg>
  );
}
