import { accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";
import type { FieldReader } from "../lots/form-fields";

/** Characters that a passphrase has at least and at most. */
export const shortestPassphrase = 12;
export const longestPassphrase = 200;

const nameShape = /^[\p{L}\p{M}\p{N}][\p{L}\p{M}\p{N}._-]*$/u;

/** The name that somebody signs in with: Unicode NFKC and without letter case, so that it is the same from every keyboard. */
export const signInName: FieldReader<string> = (text) => {
  const name = foldSignInName(text);
  if (name.length < 2 || name.length > 40)
    return refused(refusal("sign-in-name-length", [], text.trim(), "is too short or too long", "take 2 to 40 letters"));
  if (nameShape.test(name)) return accepted(name);
  const needed = "letters, figures, and . - _ between them, without blanks";
  return refused(refusal("sign-in-name-shape", [], text.trim(), "cannot be typed in on every device", needed));
};

/** A name for signing in as it is stored and compared. */
export function foldSignInName(text: string): string {
  return text.normalize("NFKC").trim().toLowerCase();
}

/** A passphrase that is chosen. What was typed is never repeated, in no refusal either. */
export const chosenPassphrase: FieldReader<string> = (text) => {
  const length = [...text].length;
  if (length < shortestPassphrase) {
    const more = `has ${length} ${length === 1 ? "character" : "characters"}`;
    return unsaid("passphrase-short", more, `take ${shortestPassphrase} or more: four or five words are easy to keep`);
  }
  if (length > longestPassphrase)
    return unsaid("passphrase-long", `has ${length} characters`, `take at most ${longestPassphrase}`);
  if (new Set(text).size < 5)
    return unsaid("passphrase-plain", "is the same few characters over and over", "take four or five words");
  return accepted(text);
};

/** A passphrase as it was typed to come in: any text, and no longer than one can be. */
export const givenPassphrase: FieldReader<string> = (text) => {
  if ([...text].length <= longestPassphrase) return accepted(text);
  return unsaid("passphrase-long", "is longer than any can be", `it has at most ${longestPassphrase} characters`);
};

/** A refusal of a passphrase that does not tell it. */
export function passphraseRefusal(code: string, path: readonly string[], wrong: string, needed: string): Refusal {
  return { code, path, given: null, needed, sentence: `The passphrase ${wrong}; ${needed}` };
}

function unsaid(code: string, wrong: string, needed: string): Outcome<never> {
  return refused(passphraseRefusal(code, [], wrong, needed));
}
