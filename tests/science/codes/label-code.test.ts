import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  checkLabelCode,
  groupedLabelCode,
  LABEL_CODE_ALPHABET,
  LABEL_CODE_BYTES,
  makeLabelCode,
} from "@/lib/science/codes/label-code";

const bytes = fc.uint8Array({ minLength: LABEL_CODE_BYTES, maxLength: LABEL_CODE_BYTES });
const codes = bytes.map(makeLabelCode);

function refusalOf(text: string) {
  const outcome = checkLabelCode(text, ["label"]);
  if (outcome.ok) throw new Error(`${text} was taken`);
  return outcome.refusals[0];
}

describe("a label code", () => {
  it("has 30 possible characters, none of them 0, 1, I, L, O or U", () => {
    expect(new Set(LABEL_CODE_ALPHABET).size).toBe(30);
    expect(LABEL_CODE_ALPHABET).not.toMatch(/[01ILOU]/);
    expect([...LABEL_CODE_ALPHABET].sort().join("")).toBe(LABEL_CODE_ALPHABET);
  });

  // By hand: all bytes 0 give the number 0, eight characters of value 0. P runs 30 → 29, 27, 23, 15, 30, 29, 27, 23
  // (doubling modulo 31), so c = (31 - 23) mod 30 = 8, the character "A".
  it("of zero bytes is worked by hand", () => {
    expect(makeLabelCode(new Uint8Array(16))).toBe("22222222A");
  });

  // By hand: the last byte alone, 31 = 1·30 + 1.
  it("spells the number of its bytes in base 30", () => {
    const brought = new Uint8Array(16);
    brought[15] = 31;
    expect(makeLabelCode(brought).slice(0, 8)).toBe("22222233");
  });

  it("is taken back with blanks, hyphens and lower case", () => {
    fc.assert(
      fc.property(codes, (code) => {
        expect(checkLabelCode(code)).toEqual({ ok: true, value: code });
        expect(checkLabelCode(` ${groupedLabelCode(code).toLowerCase()} `)).toEqual({ ok: true, value: code });
        expect(checkLabelCode(`${code.slice(0, 4)}-${code.slice(4)}`)).toEqual({ ok: true, value: code });
      }),
    );
    expect(groupedLabelCode("22222222A")).toBe("222 222 22A");
  });

  it("with any one character changed is refused", () => {
    fc.assert(
      fc.property(codes, (code) => {
        for (let place = 0; place < 9; place += 1) {
          for (const other of LABEL_CODE_ALPHABET) {
            if (other === code[place]) continue;
            const changed = `${code.slice(0, place)}${other}${code.slice(place + 1)}`;
            expect(checkLabelCode(changed).ok).toBe(false);
          }
        }
      }),
    );
  });

  it("with two neighbours swapped is refused but for about 1 in 435", () => {
    let [missed, tried] = [0, 0];
    fc.assert(
      fc.property(codes, (code) => {
        for (let place = 0; place < 8; place += 1) {
          if (code[place] === code[place + 1]) continue;
          tried += 1;
          const swapped = `${code.slice(0, place)}${code[place + 1]}${code[place]}${code.slice(place + 2)}`;
          if (checkLabelCode(swapped).ok) missed += 1;
        }
      }),
      { numRuns: 5000, seed: 30 },
    );
    // Expected 2 in 30·29 (check-character.test.ts counts all); the bounds are about four standard errors wide.
    expect(missed / tried).toBeGreaterThan(1 / 435 - 0.001);
    expect(missed / tried).toBeLessThan(1 / 435 + 0.001);
  });

  it("says which characters are wrong and where", () => {
    expect(refusalOf("2222O2221")).toMatchObject({ code: "label-code-character", path: ["label"] });
    expect(refusalOf("2222O2221")?.sentence).toBe(
      '"2222O2221" has "O" in place 5 and "1" in place 9, which no label code has; ' +
        "a label code is written with 2 to 9 and the letters without I, L, O and U",
    );
  });

  it("says how many characters there are", () => {
    expect(refusalOf("2222")?.sentence).toBe('"2222" has 4 characters; a label code has 9');
    expect(refusalOf("")?.sentence).toBe("nothing is not a label code; a label code has 9");
    expect(refusalOf("22222222AA")?.code).toBe("label-code-length");
  });

  it("says when the last character does not fit", () => {
    expect(refusalOf("22222222B")?.code).toBe("label-code-check");
    expect(refusalOf("22222222B")?.sentence).toContain("read it again");
  });

  it("is never thrown at by a text", () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        expect(() => checkLabelCode(text)).not.toThrow();
      }),
    );
  });

  it("is not made from too few bytes", () => {
    expect(() => makeLabelCode(new Uint8Array(8))).toThrow(RangeError);
  });
});
