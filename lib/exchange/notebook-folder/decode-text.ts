import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";

export interface DecodedText {
  readonly text: string;
  /** how it was read, where it was not plain UTF-8 */
  readonly notice: { readonly code: string; readonly sentence: string } | null;
}

/**
 * Reads the bytes of a CSV file: UTF-8, with or without a byte-order mark; bytes that are not UTF-8 are read as
 * Windows-1252, with a notice. Refused: a spreadsheet's own file, UTF-16, and bytes that are no text.
 */
export function decodeText(bytes: Uint8Array): Outcome<DecodedText> {
  const format = otherFormat(bytes);
  if (format !== null) return refused(refusal("not-csv-text", [], format, "is no CSV text", "save it as CSV (UTF-8)"));
  const marked = bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf;
  let decoded: DecodedText;
  try {
    const text = new TextDecoder("utf-8", { fatal: true }).decode(bytes);
    const notice = { code: "read-byte-order-mark", sentence: "begins with a byte-order mark; it was left out" };
    decoded = { text, notice: marked ? notice : null };
  } catch {
    const text = decodeWindows1252(bytes);
    const sentence = "is not UTF-8; it was read as Windows-1252: look at the letters with accents";
    decoded = { text, notice: { code: "read-windows-1252", sentence } };
  }
  if (decoded.text.includes("\0")) {
    const needed = "save it as CSV (UTF-8)";
    return refused(refusal("not-csv-text", [], "a file with characters of code 0", "is no CSV text", needed));
  }
  return accepted(decoded);
}

/** The characters of bytes 80 to 9F; five of them stand for none and are kept as they are. Source: WHATWG Encoding, index windows-1252. */
const FROM_80 =
  "\u20ac\u0081\u201a\u0192\u201e\u2026\u2020\u2021\u02c6\u2030\u0160\u2039\u0152\u008d\u017d\u008f" +
  "\u0090\u2018\u2019\u201c\u201d\u2022\u2013\u2014\u02dc\u2122\u0161\u203a\u0153\u009d\u017e\u0178";

function decodeWindows1252(bytes: Uint8Array): string {
  // Some releases of Node 20 decode this label as Latin-1, which differs in these bytes alone.
  const text = new TextDecoder("windows-1252").decode(bytes);
  return text.replace(/[\u0080-\u009f]/g, (character) => FROM_80[character.charCodeAt(0) - 0x80] ?? character);
}

function otherFormat(bytes: Uint8Array): string | null {
  const [first, second, third, fourth] = bytes;
  if (first === 0x50 && second === 0x4b && third === 0x03 && fourth === 0x04)
    return "a zip archive or spreadsheet file";
  if (first === 0xd0 && second === 0xcf && third === 0x11 && fourth === 0xe0) return "an old spreadsheet file";
  if ((first === 0xff && second === 0xfe) || (first === 0xfe && second === 0xff)) return "UTF-16 text";
  return null;
}
