import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { compareCodePoints } from "@/lib/science/code-point-order";

describe("code-point order", () => {
  it("is the order of UTF-8 bytes", () => {
    const text = fc.string({ unit: "binary", maxLength: 5 });
    fc.assert(
      fc.property(text, text, (one, other) => {
        const bytes = (words: string) => new TextEncoder().encode(words);
        expect(Math.sign(compareCodePoints(one, other))).toBe(Buffer.compare(bytes(one), bytes(other)));
      }),
    );
  });

  it("puts a character beyond the first plane after every one in it", () => {
    expect(compareCodePoints("\uffee", "🌱")).toBeLessThan(0);
    expect("\uffee" < "🌱").toBe(false);
  });
});
