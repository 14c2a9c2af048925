import { describe, expect, it } from "vitest";
import { checkCharacter, hasRightCheckCharacter } from "@/lib/science/codes/check-character";
import { LABEL_CODE_ALPHABET } from "@/lib/science/codes/label-code";

const DIGITS = "0123456789";
const DIGITS_AND_LETTERS = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";

/** Every text of the two places that changes what follows: a first character sets P, so all P are met. */
function missed(alphabet: string): { substitutions: number; swaps: number; swapsTried: number; lastSwaps: number } {
  const characters = [...alphabet];
  let [substitutions, swaps, swapsTried, lastSwaps] = [0, 0, 0, 0];
  for (const before of characters) {
    for (const a of characters) {
      for (const b of characters) {
        if (a === b) continue;
        const check = (text: string) => checkCharacter(text, alphabet);
        if (check(`${before}${a}`) === check(`${before}${b}`)) substitutions += 1;
        swapsTried += 1;
        if (check(`${before}${a}${b}`) === check(`${before}${b}${a}`)) swaps += 1;
        if (check(`${before}${a}`) === b && check(`${before}${b}`) === a) lastSwaps += 1;
      }
    }
  }
  return { substitutions, swaps, swapsTried, lastSwaps };
}

describe("check character of a hybrid system", () => {
  // Examples of the public documentation of python-stdnum (A. de Jong, modules iso7064.mod_11_10 and mod_37_36);
  // A12425GABC1234002-M is the example of the IFPI's release identifier standard.
  it.each([
    ["79462", "3", DIGITS],
    ["00200667308", "5", DIGITS],
    ["A12425GABC1234002", "M", DIGITS_AND_LETTERS],
  ])("of %s is %s", (text, check, alphabet) => {
    expect(checkCharacter(text, alphabet)).toBe(check);
    expect(hasRightCheckCharacter(`${text}${check}`, alphabet)).toBe(true);
    expect(hasRightCheckCharacter(`${text}${check === "3" ? "4" : "3"}`, alphabet)).toBe(false);
  });

  // By hand for M = 30: "2" has value 0: S = 30, P = 60 mod 31 = 29, c = (31 - 29) mod 30 = 2, the character "4".
  it("is worked by hand for one character of the label alphabet", () => {
    expect(checkCharacter("2", LABEL_CODE_ALPHABET)).toBe("4");
  });

  // Counted apart in another program (every P, every pair): 60 of 26,100 swaps for M = 30 and 20 of 900 for M = 10;
  // of the 870 endings that can be swapped with their check character, 2.
  it("of the label alphabet catches every substitution and all but 60 of 26,100 swaps of neighbours", () => {
    expect(missed(LABEL_CODE_ALPHABET)).toEqual({ substitutions: 0, swaps: 60, swapsTried: 26_100, lastSwaps: 2 });
  });

  it("of the digits catches every substitution and all but 20 of 900 swaps of neighbours", () => {
    expect(missed(DIGITS)).toMatchObject({ substitutions: 0, swaps: 20, swapsTried: 900 });
  });

  it("is not given for characters outside the alphabet", () => {
    expect(checkCharacter("12O4", DIGITS)).toBeNull();
    expect(hasRightCheckCharacter("", DIGITS)).toBe(false);
  });
});
