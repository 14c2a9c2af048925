import { describe, expect, it } from "vitest";
import { keptInWords, momentInWords } from "@/app/safe-keeping/_words/health-words";

describe("a moment", () => {
  const now = new Date("2026-05-02T21:30:00Z");
  // Auckland is 12 hours ahead of UTC in May, Los Angeles 7 behind.
  it.each([
    ["2026-05-02T03:15:00Z", "UTC", "today at 03:15"],
    ["2026-05-01T23:05:00Z", "UTC", "yesterday at 23:05"],
    ["2026-05-03T03:15:00Z", "UTC", "tomorrow at 03:15"],
    ["2026-04-24T12:00:00Z", "UTC", "24 April 2026 at 12:00"],
    ["2026-05-02T13:00:00Z", "Pacific/Auckland", "today at 01:00"],
    ["2026-05-02T03:15:00Z", "America/Los_Angeles", "yesterday at 20:15"],
  ])("%s in %s is %s", (at, zone, words) => {
    expect(momentInWords(at, zone, now)).toBe(words);
  });
});

describe("why a backup stays", () => {
  it("is told, and of one without a place that it goes", () => {
    expect(keptInWords(["day", "month"])).toBe("one of the last seven days and its month");
    expect(keptInWords([])).toBe("goes after the next one");
  });
});
