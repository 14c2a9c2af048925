import { describe, expect, it } from "vitest";
import { type GrowOutInTime, whereItStands } from "@/lib/registry/grow-outs/where-it-stands";

const today = "2027-06-15";
const nothing: GrowOutInTime = {
  ...{ sownFirst: null, sownLast: null, endedOn: null, outcome: null },
  ...{ lifeCycle: "annual", daysToSeedMax: 120, begun: false, lastSeen: null },
};
const sown = (on: string, more: Partial<GrowOutInTime> = {}) => ({ ...nothing, sownFirst: on, sownLast: on, ...more });
const stage = (growOut: GrowOutInTime) => whereItStands(growOut, today).stage;

describe("what somebody wrote goes first:", () => {
  it("an end or an outcome is an end, also of what was sown yesterday", () => {
    expect(whereItStands(sown("2027-06-14", { endedOn: "2027-06-14" }), today)).toEqual({ stage: "over", said: true });
    expect(whereItStands(sown("2027-06-14", { outcome: "failed: hail" }), today)).toEqual({
      stage: "over",
      said: true,
    });
  });

  it("without a sowing it is planned, and with one that is to come", () => {
    expect(stage(nothing)).toBe("planned");
    expect(stage(sown("2027-06-16"))).toBe("planned");
    expect(stage(sown("2027-06-15"))).toBe("standing");
    expect(stage({ ...nothing, begun: true })).toBe("standing");
  });
});

describe("else the days tell:", () => {
  it("an annual is over 120 days after its seed is ripe at the latest", () => {
    // 120 days to seed and 120 of grace: 240 days before 15 June 2027 is 18 October 2026.
    expect(stage(sown("2026-10-18"))).toBe("standing");
    expect(whereItStands(sown("2026-10-17"), today)).toEqual({ stage: "over", said: false });
  });

  it("a biennial stands through its second year, where nobody knows its days, too", () => {
    const biennial = { lifeCycle: "biennial", daysToSeedMax: null };
    // 480 + 120 days before 15 June 2027 is 23 October 2025.
    expect(stage(sown("2025-10-23", biennial))).toBe("standing");
    expect(stage(sown("2025-10-22", biennial))).toBe("over");
  });

  it("a perennial stands while anything was written of it within three years", () => {
    const perennial = { lifeCycle: "perennial" };
    expect(stage(sown("2015-04-01", { ...perennial, begun: true, lastSeen: "2024-06-15" }))).toBe("standing");
    expect(stage(sown("2015-04-01", { ...perennial, begun: true, lastSeen: "2024-06-14" }))).toBe("over");
  });

  it("without a day of sowing the last that is known of it tells", () => {
    expect(stage({ ...nothing, begun: true, lastSeen: "2026-12-31" })).toBe("over");
    expect(stage({ ...nothing, begun: true, lastSeen: "2027-01-01" })).toBe("standing");
  });
});
