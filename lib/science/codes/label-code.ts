import { accepted, type Outcome, type Path, refusal, refused } from "../outcome";
import { checkCharacter, hasRightCheckCharacter } from "./check-character";

/** 2 to 9 and the letters without I, L, O, U, so that no two are taken for each other in pencil; in code-point order. */
export const LABEL_CODE_ALPHABET = "23456789ABCDEFGHJKMNPQRSTVWXYZ";

/** Characters that carry the number, before the check character. */
export const LABEL_CODE_CHARACTERS = 8;

/** Random bytes that `makeLabelCode` wants: with 16, no code is likelier than another by more than 1 in 2^88. */
export const LABEL_CODE_BYTES = 16;

/**
 * A new label code, 8 characters and the check character, from random bytes that the caller brings (16 of them, from a
 * cryptographic source). Whether the code is taken already is for the registry to look at: there are 30^8, 656 thousand
 * million.
 * Throws a RangeError where fewer bytes are brought, a fault of the calling code.
 */
export function makeLabelCode(bytes: Uint8Array): string {
  if (bytes.length < LABEL_CODE_BYTES) {
    throw new RangeError(`a label code is made from ${LABEL_CODE_BYTES} random bytes, not ${bytes.length}`);
  }
  const size = BigInt(LABEL_CODE_ALPHABET.length);
  let number = 0n;
  for (const byte of bytes.slice(0, LABEL_CODE_BYTES)) number = number * 256n + BigInt(byte);
  let code = "";
  for (let place = 0; place < LABEL_CODE_CHARACTERS; place += 1) {
    code = `${LABEL_CODE_ALPHABET[Number(number % size)]}${code}`;
    number /= size;
  }
  return `${code}${checkCharacter(code, LABEL_CODE_ALPHABET)}`;
}

/**
 * Reads a label code as a person types it, blanks, hyphens and lower case allowed, and gives its nine characters.
 * Refused, saying which is wrong: characters that no label has (with their place), too few or too many, and a check
 * character that does not fit (something misread, or two neighbours swapped).
 */
export function checkLabelCode(text: string, path: Path = []): Outcome<string> {
  const code = text.replace(/[\s\-‐‑–—]/g, "").toUpperCase();
  const strange = [...code].flatMap((character, index) =>
    LABEL_CODE_ALPHABET.includes(character) ? [] : [`"${character}" in place ${index + 1}`],
  );
  if (strange.length > 0) {
    const wrong = `has ${strange.join(" and ")}, which no label code has`;
    const needed = "a label code is written with 2 to 9 and the letters without I, L, O and U";
    return refused(refusal("label-code-character", path, text, wrong, needed));
  }
  const length = LABEL_CODE_CHARACTERS + 1;
  if (code.length !== length) {
    const wrong = code.length === 0 ? "is not a label code" : `has ${code.length} characters`;
    return refused(refusal("label-code-length", path, text, wrong, `a label code has ${length}`));
  }
  if (!hasRightCheckCharacter(code, LABEL_CODE_ALPHABET)) {
    const needed = "read it again: one character is another, or two neighbours are swapped";
    return refused(refusal("label-code-check", path, text, "does not fit its last character", needed));
  }
  return accepted(code);
}

/** The code in groups of three, to be read out and written by hand: `7KQ 2M9 XA4`. */
export function groupedLabelCode(code: string): string {
  return code.replace(/(.{3})(?=.)/g, "$1 ");
}
