import { expect, test } from "vitest";
import { keptSpan, sizeSpan } from "@/lib/display/kept-span";

test("a span of shares has two figures at each end, and says about where they are alike", () => {
  expect(keptSpan({ low: 0.4785, high: 0.9539 })).toBe("48–95\u00a0%");
  expect(keptSpan({ low: 0.9531, high: 0.9539 })).toBe("about 95\u00a0%");
  expect(keptSpan(null)).toBe("unknown");
});

test("what is not quite all is not shown as all, and not quite nothing not as nothing", () => {
  expect(keptSpan({ low: 0.001, high: 0.999 })).toBe("1–99\u00a0%");
  expect(keptSpan({ low: 0, high: 1 })).toBe("0–100\u00a0%");
});

test("a size that nothing bounds above is at least its low end", () => {
  expect(sizeSpan({ low: 10, high: 26.7 })).toBe("10–27");
  expect(sizeSpan({ low: 10, high: null })).toBe("at least 10");
  expect(sizeSpan(null)).toBe("unknown");
});
