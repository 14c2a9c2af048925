import { create } from "qrcode";

/** A text as a code to scan: how many modules it has on a side, and the dark ones as a path, in modules. */
export interface ScanPath {
  readonly size: number;
  readonly path: string;
}

/** Level M: up to 15 % of the code may be dirty. */
export function scanPathOf(text: string): ScanPath {
  const { modules } = create(text, { errorCorrectionLevel: "M" });
  const runs: string[] = [];
  for (let y = 0; y < modules.size; y += 1) {
    for (let x = 0; x < modules.size; x += 1) {
      if (!modules.get(y, x)) continue;
      const from = x;
      while (x + 1 < modules.size && modules.get(y, x + 1)) x += 1;
      runs.push(`M${from} ${y}h${x - from + 1}v1h${from - x - 1}z`);
    }
  }
  return { size: modules.size, path: runs.join("") };
}
