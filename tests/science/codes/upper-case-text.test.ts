import fc from "fast-check";
import { create } from "qrcode";
import { describe, expect, it } from "vitest";
import { inUpperCase, outOfUpperCase, SCAN_ALPHABET } from "@/lib/science/codes/upper-case-text";

describe("a text in capitals", () => {
  // Percent-encoding of UTF-8, RFC 3986 section 2.1, with $ for %: r o w b are 72 6F 77 62; É is C3 89 (RFC 3629, U+00C9).
  it("leaves digits, capitals and hyphens, and writes the bytes of the rest", () => {
    expect(inUpperCase("A-12")).toBe("A-12");
    expect(inUpperCase("row b")).toBe("$72$6F$77+$62");
    expect(inUpperCase("É+3.4/5")).toBe("$C3$89$2B3$2E4$2F5");
  });

  it("gives back the text, whatever it is, and needs no writing over in an address", () => {
    fc.assert(
      fc.property(fc.string({ unit: "grapheme" }), (text) => {
        const code = inUpperCase(text);
        expect([...code].every((character) => SCAN_ALPHABET.includes(character))).toBe(true);
        expect(new URL(`https://example.org/S/${code}`).pathname).toBe(`/S/${code}`);
        expect(outOfUpperCase(code)).toEqual({ ok: true, value: text });
      }),
    );
  });

  // The package qrcode chooses the mode by itself; ISO/IEC 18004 has 45 characters in its alphanumeric mode.
  it("is printed in the alphanumeric mode", () => {
    const { segments } = create(SCAN_ALPHABET.slice(10), {});
    expect(segments.map((segment) => segment.mode.id)).toEqual(["Alphanumeric"]);
  });

  it("is refused with a stray sign", () => {
    for (const code of ["12$", "$C3", "$GG", "12*", "a", "12%20"]) {
      const read = outOfUpperCase(code);
      expect(read.ok, code).toBe(false);
      if (!read.ok) expect(read.refusals[0]?.code).toBe("code-damaged");
    }
  });
});
