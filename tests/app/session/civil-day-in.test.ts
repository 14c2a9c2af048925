import { describe, expect, it } from "vitest";
import { civilDayIn, offsetMinutesIn } from "@/app/_session/civil-day-in";

describe("today", () => {
  // 2026-03-01 05:30 UTC is still February in Los Angeles (UTC-8) and already 18:30 in Auckland (UTC+13 in its summer)
  const now = new Date("2026-03-01T05:30:00Z");

  it("is the day where the browser is, not where the server is", () => {
    expect(civilDayIn("America/Los_Angeles", now)).toBe("2026-02-28");
    expect(civilDayIn("Pacific/Auckland", now)).toBe("2026-03-01");
  });

  it("comes with the offset in which an entry was written down", () => {
    expect(offsetMinutesIn("America/Los_Angeles", now)).toBe(-480);
    expect(offsetMinutesIn("Pacific/Auckland", now)).toBe(780);
    expect(offsetMinutesIn("UTC", now)).toBe(0);
  });

  it("is the same at every second of a minute", () => {
    for (const moment of ["2026-11-24T22:30:00Z", "2026-11-24T22:30:30Z", "2026-11-24T22:30:59.999Z"]) {
      expect(offsetMinutesIn("UTC", new Date(moment))).toBe(0);
      expect(offsetMinutesIn("Asia/Kathmandu", new Date(moment))).toBe(345);
    }
  });

  it("falls back to the server's own day where the zone is rubbish", () => {
    expect(civilDayIn("Nowhere/Atlantis", now)).toMatch(/^2026-0[23]-\d\d$/);
    expect(civilDayIn(undefined, now)).toMatch(/^2026-0[23]-\d\d$/);
  });
});
