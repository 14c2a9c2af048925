import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { isShortCode, shortCodeOfId } from "@/lib/science/codes/short-code-of-id";

describe("the short code of an id", () => {
  // By hand, in base 30 with the digits 23456789ABCDEFGHJKMNPQRSTVWXYZ (2 is 0, 3 is 1, Z is 29):
  // 0 is 22222; 31 = 1·30 + 1 is 22233; 30^5 - 1 = 24,299,999 = 0x172C9DF is ZZZZZ; 30^5 = 0x172C9E0 begins anew.
  it("is its last 48 bits in base 30", () => {
    expect(shortCodeOfId("019a0000-0000-7000-8000-000000000000")).toBe("22222");
    expect(shortCodeOfId("019a0000-0000-7000-8000-00000000001f")).toBe("22233");
    expect(shortCodeOfId("019a0000-0000-7000-8000-00000172c9df")).toBe("ZZZZZ");
    expect(shortCodeOfId("019A0000-0000-7000-8000-00000172C9E0")).toBe("22222");
  });

  it("is written with the characters of a label code", () => {
    fc.assert(
      fc.property(fc.uuid(), (id) => {
        expect(isShortCode(shortCodeOfId(id))).toBe(true);
      }),
    );
    expect(isShortCode("7KQ2")).toBe(false);
    expect(isShortCode("7KQ2O")).toBe(false);
  });

  it("is not made of what is no id", () => {
    expect(() => shortCodeOfId("grow-out")).toThrow(RangeError);
  });
});
