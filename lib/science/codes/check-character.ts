/**
 * Check character of a hybrid system MOD M+1,M, where M is the number of characters of the alphabet (even).
 *
 * Recursive method: P(1) = M; for each character of value a: S = (P + a) mod M, 0 being taken as M;
 * P = 2·S mod (M + 1). The check character c makes (P + c) mod M = 1.
 * Where M + 1 is a prime, as 11, 31 and 37 are, every single substitution is caught, and of the swaps of two neighbours
 * all but 2 in M·(M − 1).
 * Source: ISO/IEC 7064:2003, hybrid systems (standardised for M = 10, 26 and 36; the same rule runs here for any alphabet).
 */
export function checkCharacter(text: string, alphabet: string): string | null {
  const product = productOf(text, alphabet);
  if (product === null) return null;
  const size = alphabet.length;
  return alphabet[(size + 1 - product) % size] ?? null;
}

/** Whether the last character is the check character of those before it. */
export function hasRightCheckCharacter(text: string, alphabet: string): boolean {
  return text.length > 1 && checkCharacter(text.slice(0, -1), alphabet) === text.slice(-1);
}

/** P after the last character, 1 to M; null where a character is not of the alphabet. */
function productOf(text: string, alphabet: string): number | null {
  const size = alphabet.length;
  let product = size;
  for (const character of text) {
    const value = alphabet.indexOf(character);
    if (value < 0) return null;
    const sum = (product + value) % size || size;
    product = (2 * sum) % (size + 1);
  }
  return product;
}
