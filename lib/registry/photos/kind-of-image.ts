import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";

/** What is taken: still pictures, as phones, cameras and scanners make them. */
export type ImageKind = "JPEG" | "PNG" | "WebP" | "AVIF";

const choose = "choose a photograph as JPEG, PNG, WebP or AVIF";

/** So many bytes tell what a file is. */
export const bytesThatTell = 4096;

/**
 * What kind of picture some bytes are, by their first few thousand and never by the file's name. What is none of those that are taken is
 * refused here, before any program for pictures looks at it.
 */
export function kindOfImage(head: Uint8Array, name: string): Outcome<ImageKind> {
  const no = (code: string, wrong: string, needed = choose) => refused(refusal(code, ["photo"], name, wrong, needed));
  if (head.length === 0) return no("photo-empty", "is empty");
  const letters = Buffer.from(head.buffer, head.byteOffset, head.length).toString("latin1");
  if (letters.startsWith("\u00ff\u00d8\u00ff")) return accepted("JPEG");
  if (letters.startsWith("\u0089PNG\r\n\u001a\n")) {
    if (letters.includes("acTL")) return no("photo-moves", "is a moving picture");
    return accepted("PNG");
  }
  if (letters.startsWith("RIFF") && letters.slice(8, 12) === "WEBP") return accepted("WebP");
  if (letters.startsWith("GIF8")) return no("photo-kind", "is a GIF, which is no photograph");
  if (letters.slice(4, 8) === "ftyp") {
    const brands = letters.slice(8, 64);
    if (/avis/.test(brands)) return no("photo-moves", "is a moving picture");
    if (/avif/.test(brands)) return accepted("AVIF");
    if (/heic|heix|heim|heis|mif1/.test(brands))
      return no("photo-kind", "is a HEIC file, which cannot be read here", "let the phone give it as JPEG");
    return no("photo-kind", "is a film, or a kind of picture that is not known here");
  }
  if (/^\s*(\ufeff|\u00ef\u00bb\u00bf)?\s*<(\?xml|!doctype|svg|html|!--)/i.test(letters))
    return no("photo-kind", "is a drawing or a page of text (SVG, HTML), which can hold a program");
  return no("photo-kind", "is no picture");
}
