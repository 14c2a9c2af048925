import { LABEL_CODE_ALPHABET } from "./label-code";

/** Characters of a short code. */
export const SHORT_CODE_CHARACTERS = 5;

/**
 * A short code for a record, worked out of its id and never stored, so that a phone without signal and the registry find the same one: the
 * last 48 bits of the UUID (of a time-ordered one, those that chance has made) modulo 30^5, written in the characters of a label code.
 *
 * It is no key. Two of 300 grow-outs have the same one with a probability of about 1 in 540 (300·299/2 pairs, 30^5 = 24.3 million codes), so whoever
 * looks one up must be ready to find two. Throws a RangeError for a text that is no UUID, a fault of the calling code.
 */
export function shortCodeOfId(id: string): string {
  const digits = id.replaceAll("-", "").toLowerCase();
  if (!/^[0-9a-f]{32}$/.test(digits)) throw new RangeError(`${id} is no UUID`);
  const size = LABEL_CODE_ALPHABET.length;
  let number = Number.parseInt(digits.slice(-12), 16) % size ** SHORT_CODE_CHARACTERS;
  let code = "";
  for (let place = 0; place < SHORT_CODE_CHARACTERS; place += 1) {
    code = `${LABEL_CODE_ALPHABET[number % size]}${code}`;
    number = Math.floor(number / size);
  }
  return code;
}

/** Whether a text is written as a short code is. */
export function isShortCode(text: string): boolean {
  return text.length === SHORT_CODE_CHARACTERS && [...text].every((each) => LABEL_CODE_ALPHABET.includes(each));
}
