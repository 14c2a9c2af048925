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
    const text = new TextDecoder("windows-1252").decode(bytes);
    const sentence = "is not UTF-8; it was read as Windows-1252: look at the letters with accents";
    decoded = { text, notice: { code: "read-windows-1252", sentence } };
  }
  if (decoded.text.includes("\0")) {
    const needed = "save it as CSV (UTF-8)";
    return refused(refusal("not-csv-text", [], "a file with characters of code 0", "is no CSV text", needed));
  }
  return accepted(decoded);
}

function otherFormat(bytes: Uint8Array): string | null {
  const [first, second, third, fourth] = bytes;
  if (first === 0x50 && second === 0x4b && third === 0x03 && fourth === 0x04)
    return "a zip archive or spreadsheet file";
  if (first === 0xd0 && second === 0xcf && third === 0x11 && fourth === 0xe0) return "an old spreadsheet file";
  if ((first === 0xff && second === 0xfe) || (first === 0xfe && second === 0xff)) return "UTF-16 text";
  return null;
}
