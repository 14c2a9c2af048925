import { accepted, type Outcome, refusal, refused } from "../outcome";

/**
 * The characters that stand in what we print as a code: all are of the alphanumeric mode of ISO/IEC 18004 (QR), in which a module carries
 * almost twice as much as it does of small letters. 42 of them, 43 being a prime as the check character wants (ISO 7064).
 */
export const SCAN_ALPHABET = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ%+-./$";

const standing = /^[0-9A-Z./$-]$/;

/**
 * Any text in those characters: digits, capitals, full stop, hyphen, slash and dollar as they are, a blank as +, all else as the bytes of
 * its UTF-8, each as % and two digits (RFC 3986, section 2.1). `12` stays `12`, `row b` becomes `%72%6F%77+%62`.
 */
export function inUpperCase(text: string): string {
  return [...text]
    .map((character) => {
      if (standing.test(character)) return character;
      if (character === " ") return "+";
      return Array.from(new TextEncoder().encode(character), (byte) =>
        `%${byte.toString(16).padStart(2, "0")}`.toUpperCase(),
      ).join("");
    })
    .join("");
}

/** The text back again. Refused where it holds a character that cannot stand there, or % and what is no byte of UTF-8. */
export function outOfUpperCase(code: string): Outcome<string> {
  const strange = [...code].find((character) => !SCAN_ALPHABET.includes(character));
  if (strange !== undefined) return damaged(code, `has "${strange}", which none of our codes has`);
  try {
    return accepted(decodeURIComponent(code.replaceAll("+", " ")));
  } catch {
    return damaged(code, "has a % that begins no character");
  }
}

function damaged(code: string, wrong: string): Outcome<never> {
  return refused(refusal("code-damaged", [], code, wrong, "scan it again, or type what stands beside it"));
}
