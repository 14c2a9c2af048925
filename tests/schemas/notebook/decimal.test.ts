import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readDecimal, writeDecimal } from "@/lib/schemas/notebook/decimal";

const readAs = (text: string, mark?: "." | ",") => {
  const read = readDecimal(text, mark);
  return read.ok ? read.value : read.refusals[0]?.code;
};

describe("a plain decimal", () => {
  it.each([
    ["12", 12],
    ["12.50", 12.5],
    ["0.0625", 0.0625],
    [".5", 0.5],
    ["-3", -3],
    ["007", 7],
    [" 4 ", 4],
    ["-0", 0],
  ])("is read: %s", (text, value) => {
    expect(readAs(text)).toBe(value);
  });

  it.each([
    ["12 g", "number-with-unit"],
    ["40%", "number-with-unit"],
    ["1e3", "number-with-exponent"],
    ["1.5E-3", "number-with-exponent"],
    ["1,234", "number-with-thousands-mark"],
    ["1,234.5", "number-with-thousands-mark"],
    ["1 234", "number-with-thousands-mark"],
    ["1'234", "number-with-thousands-mark"],
    ["12,5", "number-with-comma"],
    ["NaN", "number-not-plain"],
    ["Infinity", "number-not-plain"],
    ["0x10", "number-not-plain"],
    ["1_000", "number-not-plain"],
    ["--1", "number-not-plain"],
    ["1.2.3", "number-not-plain"],
    ["about 40", "number-not-plain"],
    ["12.", "number-not-plain"],
    ["9".repeat(400), "number-too-large"],
  ])("is not this: %s", (text, code) => {
    expect(readAs(text)).toBe(code);
  });

  it("may have a comma where the table has decimal commas", () => {
    expect(readAs("12,5", ",")).toBe(12.5);
    expect(readAs("1,234", ",")).toBe(1.234);
    expect(readAs("12.5", ",")).toBe(12.5);
    expect(readAs("0.951", ",")).toBe(0.951);
    expect(readAs("1.234", ",")).toBe("number-with-thousands-mark");
    expect(readAs("1.234,5", ",")).toBe("number-with-thousands-mark");
  });

  it("says how it would be right", () => {
    const read = readDecimal("12 g");
    expect(!read.ok && read.refusals[0]?.sentence).toBe('"12 g" has a unit; write the number alone, as 12');
    const comma = readDecimal("0,5 kg");
    expect(!comma.ok && comma.refusals[0]?.needed).toBe("write the number alone, as 0.5");
  });
});

describe("a written number", () => {
  it("is the shortest plain decimal", () => {
    expect(writeDecimal(18)).toBe("18");
    expect(writeDecimal(0.1)).toBe("0.1");
    expect(writeDecimal(-0)).toBe("0");
    expect(writeDecimal(1e-7)).toBe("0.0000001");
    expect(writeDecimal(-1.5e-9)).toBe("-0.0000000015");
    expect(writeDecimal(1e21)).toBe("1000000000000000000000");
    expect(writeDecimal(1.25e23)).toBe("125000000000000000000000");
  });

  it("reads back as the same number and never has an exponent", () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (value) => {
        const text = writeDecimal(value);
        expect(text).not.toMatch(/e/i);
        expect(readAs(text)).toBe(value + 0);
      }),
    );
  });
});
