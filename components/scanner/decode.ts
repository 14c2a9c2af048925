import jsQR from "jsqr";
import type { Picture } from "./picture";

/**
 * What the code (QR, ISO/IEC 18004) in a picture says; null where none is found, and also where it could not be read without doubt. Black on
 * white only, as we print: looking for the reverse, too, would take twice as long. This file is what brings the reader with it, so it is only
 * ever loaded when somebody scans.
 */
export function codeInPicture({ data, width, height }: Picture): string | null {
  return jsQR(data, width, height, { inversionAttempts: "dontInvert" })?.data || null;
}
