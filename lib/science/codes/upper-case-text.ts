import { accepted, type Outcome, refusal, refused } from "../outcome";

/**
 * The characters that stand in what we print as a code: all are of the alphanumeric mode of ISO/IEC 18004 (QR), in which a module carries
 * almost twice as much as it does of small letters. 42 of them, 43 being a prime as the check character wants (ISO 7064).
 */
export const SCAN_ALPHABET = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ%+-./$";

const standing = /^[0-9A-Z-]$/;
const written = /^[0-9A-Z$+-]*$/;

/**
 * Any text in some of those characters: digits, capitals and the hyphen as they are, a blank as +, all else as the bytes of its UTF-8, each as
 * $ and two digits. It is the percent-encoding of RFC 3986 with $ for the percent sign, so that it stands in an address and no browser takes it
 * apart. `12` stays `12`, `row b` becomes `$72$6F$77+$62`.
 */
export function inUpperCase(text: string): string {
  return [...text]
    .map((character) => {
      if (standing.test(character)) return character;
      if (character === " ") return "+";
      return Array.from(new TextEncoder().encode(character), (byte) =>
        `$${byte.toString(16).padStart(2, "0")}`.toUpperCase(),
      ).join("");
    })
    .join("");
}

/** The text back again. Refused where it holds a character that cannot stand there, or a $ that begins no byte of UTF-8. */
export function outOfUpperCase(code: string): Outcome<string> {
  if (!written.test(code)) return damaged(code, "is damaged");
  try {
    return accepted(decodeURIComponent(code.replaceAll("+", " ").replaceAll("$", "%")));
  } catch {
    return damaged(code, "has a $ that begins no character");
  }
}

function damaged(code: string, wrong: string): Outcome<never> {
  return refused(refusal("code-damaged", [], code, wrong, "scan it again, or type what stands beside it"));
}
