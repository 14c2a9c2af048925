import { expect, it } from "vitest";
import { foreignShare, foreignShareSpan } from "@/lib/display/foreign-share";

const plain = (text: string) => text.replaceAll("\u00a0", " ");

it("a share of foreign pollen has at most two figures and none below a hundredth of a percent", () => {
  expect([0.00045, 0.0155, 0.012, 0.3, 0.00003, 0, 1, 0.9999].map((share) => plain(foreignShare(share)))).toEqual([
    "0.045 %",
    "1.6 %",
    "1.2 %",
    "30 %",
    "below 0.01 %",
    "0 %",
    "100 %",
    "100 %",
  ]);
});

it("its span is said from end to end", () => {
  expect(plain(foreignShareSpan(0.00155, 0.155))).toBe("0.16–16 %");
  expect(plain(foreignShareSpan(0.00009, 0.0022))).toBe("below 0.01 to 0.22 %");
  expect(plain(foreignShareSpan(0.000001, 0.00002))).toBe("below 0.01 %");
  expect(plain(foreignShareSpan(0.2, 0.2))).toBe("20 %");
});
